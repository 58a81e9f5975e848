import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { exactly, findStandIns, type Original } from '../../../src/engine/index.ts';

const catalogue = loadCatalogue();

const ratingOf = (original: Original, position: string, vdc?: number) =>
  findStandIns(catalogue, {
    original,
    position,
    conditions: vdc === undefined ? {} : { vdc: exactly(vdc) },
  }).find(({ candidate }) => candidate.type === original.type)?.candidate.ratedVoltage;

const electrolytic = (farad: number, volts?: number): Original => ({
  type: 'al-electrolytic-wet',
  capacitance: exactly(farad),
  ...(volts === undefined ? {} : { ratedVoltage: exactly(volts) }),
});

test.each<[string, Original, string, number | undefined, number]>([
  // Three fifths of 25 V at the worst would let 16 V do, by conditions.csv.
  ['nobody measured', electrolytic(22e-6, 25), 'cathode-bypass', undefined, 25],
  ['nobody measured', electrolytic(100e-6, 50), 'emitter-bypass', undefined, 50],
  ['9 V were measured', electrolytic(22e-6, 25), 'cathode-bypass', 9, 16],
])('an electrolytic keeps its rating where %s', (_what, original, position, vdc, volts) => {
  expect(ratingOf(original, position, vdc)).toBe(volts);
});

test('what is often rated far above its circuit need not', () => {
  const film: Original = {
    type: 'pet-metallized',
    capacitance: exactly(100e-9),
    ratedVoltage: exactly(160),
  };
  expect(ratingOf(film, 'interstage-coupling')).toBeLessThan(160);
});

// market.csv: cans of 400 and 450 V from 47 to 680 µF in steps of E12.
test.each([
  [100, 400],
  [220, 350],
  [220, 400],
  [220, 450],
  [470, 400],
  [470, 450],
  // Those of 160 to 250 V reach 2200 µF, those of 500 V 330 µF and axial ones 100 µF.
  [470, 200],
  [1000, 200],
  [220, 250],
  [47, 500],
  [220, 500],
])('a reservoir of %i µF %i V is replaced by its own value, which is sold', (micro, volts) => {
  const found = findStandIns(catalogue, {
    original: electrolytic(micro * 1e-6, volts),
    position: 'reservoir',
  });
  const [first] = found;
  expect(first?.candidate.type).toBe('al-electrolytic-wet');
  expect(first?.verdict).toBe('fits');
  expect((first?.candidate.capacitance ?? 0) * 1e6).toBeCloseTo(micro, 6);
});
