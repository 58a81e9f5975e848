import { dissipation } from '../../equations/heat.ts';
import { switchOnPeak, storedEnergy } from '../../equations/inrush.ts';
import { timeToFall, voltageLeft } from '../../equations/mains.ts';
import { ruleOf } from '../../rule-of-thumb.ts';
import { noteIf, optionalQuantity, quantity, withFacts } from '../sum.ts';

/** Charge left on a capacitor, and how a resistor takes it off. */
export const discharge = withFacts((catalogue) => ({ deadly: ruleOf(catalogue, 'deadly-energy') }))(
  {
    id: 'discharge',
    title: 'Stored energy and discharge',
    lead: 'How much energy a charged capacitor holds, and how long a resistor takes to bring it down to a safe voltage.',
    group: 'mains',
    inputs: {
      c: quantity({
        label: 'Capacitance',
        symbol: 'C',
        unit: 'F',
        usual: '100 µF ±20 %',
        lowest: 1e-12,
        highest: 10,
      }),
      v: quantity({
        label: 'Voltage on it',
        symbol: 'V',
        unit: 'V',
        usual: '350 V',
        lowest: 0.1,
        highest: 100_000,
      }),
      end: quantity({
        label: 'Voltage to discharge to',
        symbol: 'V_end',
        unit: 'V',
        usual: '30 V',
        lowest: 0.01,
        highest: 10_000,
        hint: 'what counts as safe is for your local rules to say',
      }),
      r: quantity({
        label: 'Discharge resistor',
        symbol: 'R',
        unit: 'ohm',
        usual: '2.2 kΩ ±5 %',
        lowest: 0.1,
        highest: 1e9,
      }),
      after: optionalQuantity({
        label: 'Time after switching off',
        symbol: 't_d',
        unit: 's',
        lowest: 0,
        highest: 1e9,
        hint: 'for the voltage left then',
      }),
    },
    outputs: {
      time: { label: 'Discharge time', symbol: 't', unit: 's', headline: true },
      left: { label: 'Voltage left at the time', symbol: 'V_d', unit: 'V' },
      constant: { label: 'Time constant, down to 37 %', symbol: 'tau', unit: 's' },
      energy: { label: 'Energy stored', symbol: 'W', unit: 'J' },
      peak: { label: 'Current at the first instant', symbol: 'I', unit: 'A' },
      power: { label: 'Heat in the resistor at first', symbol: 'P', unit: 'W' },
    },
    equations: [
      'tau = R*C',
      't = tau*max(0, ln(V/V_end))',
      'V_d = V*exp(-t_d/tau)',
      'W = C*V^2/2',
      'I = V/R',
      'P = V^2/R',
    ],
    at: ({ c, v, end, r, after }) => ({
      time: timeToFall(v, end, r * c),
      left: after === undefined ? undefined : voltageLeft(v, after, r * c),
      constant: r * c,
      energy: storedEnergy(c, v),
      peak: switchOnPeak(v, r),
      power: dissipation(v, r),
    }),
    notes: ({ v, end }, { energy = 0 }, { deadly }) => [
      ...noteIf(v <= end, 'remark', 'It is no higher than that to begin with.'),
      ...noteIf(
        energy >= deadly,
        'caution',
        'Energy of this size can kill. Discharge through a resistor held by an insulated tool, measure, then touch.',
      ),
      {
        kind: 'remark',
        text: 'After a discharge some of the charge creeps back out of the dielectric: leave the resistor on, or measure again.',
      },
    ],
    plots: [
      { title: 'Time against the resistor', x: 'r', scale: 'log', y: ['time'], yScale: 'log' },
    ],
    cautions: ['stored-charge'],
    sources: ['identity'],
    checks: [
      {
        what: 'Worked by hand: 100 µF at 350 V, 2.2 kΩ, down to 30 V',
        inputs: { c: '100 µF', v: '350 V', end: '30 V', r: '2.2 kΩ' },
        expected: { time: 0.5405, energy: 6.125, peak: 0.15909, power: 55.68 },
        within: 0.001,
        source: 'identity',
      },
      {
        what: 'Printed: of 340 V 125.8 V are left after one time constant, with 37 % for 1/e',
        inputs: { c: '200 nF', v: '340 V', r: '5 MΩ', after: '1 s' },
        expected: { left: 125.8, constant: 1 },
        within: 0.006,
        source: 'angui-60950b',
      },
    ],
  },
);
