import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { assess, exactly, findKindStandIns, type Finding } from '../../src/engine/index.ts';
import { assessDevice } from '../../src/engine/devices/assess.ts';

/** Every condition at either of its ends leaves numbers that can be told, and words without a gap. */

const catalogue = loadCatalogue();
const { units } = catalogue;

const endsOf = ({ unit, lowest, highest }: { unit: string; lowest: number; highest: number }) =>
  [lowest, highest].map((end) => end * (units[unit]?.factor ?? NaN));

const oddIn = (findings: readonly Finding[]): string[] =>
  findings.flatMap((finding) => {
    const told = [finding.original, finding.standIn].flatMap((range) =>
      range === undefined ? [] : [range.min, range.typ, range.max],
    );
    const isGap = /NaN|Infinity|undefined|(?:^|[ (])–(?:$|[ );,])/u.test(finding.working);
    const isFinite = told.every((number) => Number.isFinite(number));
    return isFinite && !isGap ? [] : [`${finding.finding}: ${told.join(' ')}; ${finding.working}`];
  });

const asked = (position: string): string[] =>
  catalogue.conditions.filter((row) => row.position === position).map(({ condition }) => condition);

const definitionOf = (condition: string) => {
  const row = catalogue.conditionDefinitions[condition];
  if (row === undefined) throw new Error(`no condition ${condition}`);
  return row;
};

const FEW = ['pet-metallized', 'al-electrolytic-wet', 'ceramic-x7r', 'ta-mno2-solid'];

describe('at the ends of each condition', () => {
  test.each(Object.keys(catalogue.positions))('capacitors in %s', (position) => {
    const odd = asked(position).flatMap((condition) =>
      endsOf(definitionOf(condition)).flatMap((end) =>
        FEW.flatMap((type, index) => {
          const request = {
            original: { type },
            position,
            conditions: { [condition]: exactly(end) },
          };
          const other = FEW[(index + 1) % FEW.length] ?? type;
          return [type, other].flatMap((one) =>
            oddIn(assess(catalogue, request, { type: one }).findings),
          );
        }),
      ),
    );
    expect(odd).toEqual([]);
  });

  test.each(Object.values(catalogue.kindPositions))('$kind in $id', ({ id: position, kind }) => {
    const types = Object.values(catalogue.kindTypes).filter((row) => row.kind === kind);
    const odd = asked(position).flatMap((condition) =>
      endsOf(definitionOf(condition)).flatMap((end) =>
        types.slice(0, 2).flatMap(({ id: type }) =>
          findKindStandIns(catalogue, {
            original: { type },
            position,
            conditions: { [condition]: exactly(end) },
          }).flatMap(({ findings }) => oddIn(findings)),
        ),
      ),
    );
    expect(odd).toEqual([]);
  });

  test.each(catalogue.devices.uses)('devices in $id', (use) => {
    const { devices, conditions, conditionDefinitions } = catalogue.devices;
    const own = devices.filter(({ function: what }) => use.functions.includes(what)).slice(0, 3);
    const odd = conditions
      .filter(({ position }) => position === use.id)
      .flatMap(({ condition }) => {
        const row = conditionDefinitions.find(({ id }) => id === condition);
        return (row === undefined ? [] : endsOf(row)).flatMap((end) =>
          own.flatMap((original) =>
            own.flatMap((device) => {
              const request = { original, use, given: { [condition]: end } };
              return oddIn(assessDevice(catalogue, request, device).findings);
            }),
          ),
        );
      });
    expect(odd).toEqual([]);
  });
});
