import { edgeCurrent, edgeShare } from '../../equations/edge.ts';
import { defineSum, noteIf, optionalQuantity, quantity } from '../sum.ts';

/** Steepest edge (V/s): of the step (V) in its time (s) where both are given, else as it is given. */
const slopeOf = (edge: number, swing: number | undefined, time: number | undefined): number =>
  swing === undefined || time === undefined ? edge : swing / time;

/** A steep edge against what a part withstands, and the current that it drives. */
export const pulseEdge = defineSum({
  id: 'pulse-edge',
  title: 'Steep edges (dV/dt)',
  lead: 'How steep an edge across a capacitor is against what its maker allows, and the current that it drives through the ends.',
  group: 'rating',
  inputs: {
    edge: quantity({
      label: 'Steepest edge in the circuit',
      symbol: 's',
      unit: 'V/s',
      bare: 'V/µs',
      usual: '20 V/µs',
      lowest: 0,
      highest: 1e12,
    }),
    swing: optionalQuantity({
      label: 'Or the step',
      symbol: 'dV',
      unit: 'V',
      lowest: 0,
      highest: 1e5,
      hint: 'with its time it goes before the edge above',
    }),
    time: optionalQuantity({
      label: 'and the time that it takes',
      symbol: 'dt',
      unit: 's',
      bare: 'µs',
      lowest: 1e-12,
      highest: 10,
      hint: 'may stay empty',
    }),
    rating: quantity({
      label: 'Rated dV/dt',
      symbol: 's_R',
      unit: 'V/s',
      bare: 'V/µs',
      usual: '75 V/µs',
      lowest: 1e3,
      highest: 1e12,
      hint: 'from its data sheet',
    }),
    c: quantity({
      label: 'Capacitance',
      symbol: 'C',
      unit: 'F',
      usual: '10 nF ±10 %',
      lowest: 1e-13,
      highest: 1,
    }),
  },
  outputs: {
    share: { label: 'Edge against its rating', symbol: 'n', unit: 'fraction', headline: true },
    slope: { label: 'Steepest edge', symbol: 's_e', unit: 'V/s', step: true },
    current: { label: 'Current at the edge', symbol: 'I', unit: 'A' },
    allowed: { label: 'Current at the steepest edge allowed', symbol: 'I_R', unit: 'A' },
    shortest: { label: 'Shortest time for the step', symbol: 't_s', unit: 's' },
  },
  equations: ['s_e = s', 'n = s_e/s_R', 'I = C*s_e', 'I_R = C*s_R'],
  equationsFor: ({ swing, time }) => [
    swing === undefined || time === undefined ? 's_e = s' : 's_e = dV/dt',
    'n = s_e/s_R',
    'I = C*s_e',
    'I_R = C*s_R',
    ...(swing === undefined ? [] : ['t_s = dV/s_R']),
  ],
  at: ({ edge, swing, time, rating, c }) => {
    const slope = slopeOf(edge, swing, time);
    return {
      share: edgeShare(slope, rating),
      slope,
      current: edgeCurrent(c, slope),
      allowed: edgeCurrent(c, rating),
      shortest: swing === undefined ? undefined : swing / rating,
    };
  },
  notes: ({ swing, time }, { share = 0 }) => [
    ...noteIf(
      share > 1,
      'limit',
      'The edge is steeper than its rating: the current burns the contacts at the ends of a metallized film away, a little with every edge.',
    ),
    ...noteIf(
      (swing === undefined) !== (time === undefined),
      'limit',
      'Step and time count only together: the edge in the first field is used.',
    ),
    {
      kind: 'remark',
      text: 'The rating is for edges that come again and again. Where a resistor stands in series, the current is at most the step over the resistance.',
    },
  ],
  plots: [
    {
      title: 'Current against the edge',
      x: 'edge',
      scale: 'log',
      taken: ({ edge, swing, time }) => ({
        edge: slopeOf(edge, swing, time),
        swing: undefined,
        time: undefined,
      }),
      span: ({ edge, rating }) => [
        Math.min(edge > 0 ? edge : rating, rating) / 30,
        Math.max(edge, rating) * 30,
      ],
      y: ['current'],
      yScale: 'log',
      limits: ({ c, rating }) => [{ label: 'allowed', value: edgeCurrent(c, rating) }],
    },
  ],
  cautions: [],
  sources: ['wima-pulse', 'identity'],
  checks: [
    {
      what: 'Worked by hand: a step of 300 V in 3 µs is 100 V/µs, and 0.1 µF takes 10 A of it',
      inputs: { swing: '300 V', time: '3 µs', c: '0.1 µF' },
      expected: { current: 10 },
      within: 1e-6,
      source: 'identity',
    },
    {
      what: 'From a printed rating: 1 µF of a box of 15 mm pitch may have 45 V/µs, and 45 A',
      inputs: { edge: '9 V/µs', rating: '45 V/µs', c: '1 µF' },
      expected: { allowed: 45, share: 0.2 },
      within: 1e-6,
      source: 'jinpei-cdad-data',
      locator: 'pulse table',
    },
  ],
});
