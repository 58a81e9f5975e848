import type { BodyRow } from '../../schemas/sizes.ts';
import type { Fault } from '../fault.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows, type GoodRow } from './lookups.ts';

const rule = 'body-shape';

/** Two sides that are the same diameter, by shape. */
const ROUND: Partial<
  Record<BodyRow['shape'], ['length_mm' | 'width_mm', 'width_mm' | 'height_mm']>
> = {
  can: ['length_mm', 'width_mm'],
  tube: ['width_mm', 'height_mm'],
  disc: ['length_mm', 'height_mm'],
};

/** Shapes whose straight leads come out below the body. */
const LEADS_BELOW: readonly string[] = ['can', 'box'];

/** Shapes that have no lead pitch of their own. */
const NO_PITCH: readonly string[] = ['tube', 'chip'];

/** A body longer than this (mm) is no part for a board or a chassis. */
const LONGEST = 300;

const roundFaults = (row: GoodRow<'bodies.csv'>): Fault[] => {
  const sides = ROUND[row.value.shape];
  if (sides === undefined || row.value[sides[0]] === row.value[sides[1]]) return [];
  return [
    cellFault(rule, 'bodies.csv', row, sides[1], {
      wrong: `a ${row.value.shape} that is not round`,
      expected: `${sides[0]} and ${sides[1]} alike`,
    }),
  ];
};

const sideFaults = (row: GoodRow<'bodies.csv'>): Fault[] =>
  (['length_mm', 'width_mm', 'height_mm'] as const)
    .filter((column) => row.value[column] > LONGEST)
    .map((column) =>
      cellFault(rule, 'bodies.csv', row, column, {
        wrong: 'a side that no part has',
        expected: `at most ${LONGEST} mm`,
      }),
    );

const pitchFaults = (row: GoodRow<'bodies.csv'>): Fault[] => {
  const { shape, length_mm: length, pitch_mm: pitches } = row.value;
  const rising = pitches.every((pitch, index) => pitch > (pitches[index - 1] ?? 0));
  const fault = (wrong: string, expected: string): Fault =>
    cellFault(rule, 'bodies.csv', row, 'pitch_mm', { wrong, expected });
  if (!rising) return [fault('pitches out of order', 'numbers above zero, each above the last')];
  if (NO_PITCH.includes(shape) && pitches.length > 0) {
    return [fault(`a ${shape} has no pitch of its own`, 'nothing')];
  }
  if (LEADS_BELOW.includes(shape) && pitches.some((pitch) => pitch >= length)) {
    return [fault('leads further apart than the body is long', `less than ${length}`)];
  }
  return [];
};

const leadFaults = (row: GoodRow<'bodies.csv'>): Fault[] => {
  const { lead_mm: lead, width_mm: width, shape } = row.value;
  if (lead === undefined) return [];
  const said =
    shape === 'chip'
      ? { wrong: 'a chip has no leads', expected: 'nothing' }
      : { wrong: 'leads thicker than the body', expected: `less than ${width}` };
  return shape === 'chip' || lead >= width
    ? [cellFault(rule, 'bodies.csv', row, 'lead_mm', said)]
    : [];
};

export const bodyShapes: Check = {
  id: rule,
  about: 'A body has the sides of its shape, and leads that come out of it.',
  needs: ['bodies.csv'],
  check: (tables) =>
    goodRows(tables, 'bodies.csv').flatMap((row) => [
      ...roundFaults(row),
      ...sideFaults(row),
      ...pitchFaults(row),
      ...leadFaults(row),
    ]),
};
