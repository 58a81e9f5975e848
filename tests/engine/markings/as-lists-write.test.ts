import { describe, expect, test } from 'vitest';
import { readMarking } from '../../../src/engine/markings/index.ts';
import { loadCatalogue } from '../../../src/catalogue/load.ts';
import { n, p, u } from './cases.ts';

const catalogue = loadCatalogue();

/** Markings as people put them into lists, with what the best reading takes them for: F or ohm, volts. */
interface Listed {
  c?: number;
  r?: number;
  volts?: number;
  /** Tolerance each way, as a fraction. */
  within?: number;
  types?: string[];
}

// Worked out by hand from what is written; that lists write so is common practice, no source.
describe('what a list writes beside the value', () => {
  test.each<[text: string, listed: Listed]>([
    // The designator first, which is no value.
    ['R5 10k', { r: 10e3 }],
    ['R5: 470', { r: 470 }],
    ['R5 = 4k7', { r: 4700 }],
    ['R5 0.47', { r: 0.47 }],
    ['R5 103', { r: 10e3 }],
    ['R12 220 1/4W', { r: 220 }],
    ['RV2 4k7 lin', { r: 4700 }],
    ['C12 0.1 50V', { c: 100 * n, volts: 50 }],
    ['C3=22n 100V', { c: 22 * n, volts: 100 }],
    ['c3 22n', { c: 22 * n }],
    ['C1 104', { c: 100 * n }],
    ['C1 100', { c: 100 * p }],
    ['C7 10/16', { c: 10 * u, volts: 16 }],
    // By itself it is a value.
    ['R10', { r: 0.1 }],
    ['R10 5%', { r: 0.1, within: 0.05 }],
    ['R47 5W', { r: 0.47 }],
    ['R100 J', { r: 0.1, within: 0.05 }],
    // What a resistor is made of, and watts, which tell plain ohms.
    ['2k2 5% CF', { r: 2200, within: 0.05 }],
    ['CC 10k', { r: 10e3 }],
    ['5K WW', { r: 5000 }],
    ['10 WW', { r: 10 }],
    ['220 CF', { r: 220 }],
    ['MOX 1W 47k', { r: 47e3 }],
    ['cermet 10K', { r: 10e3 }],
    ['100K 20T cermet', { r: 100e3 }],
    ['10k 25 turn trimmer', { r: 10e3 }],
    ['4M7 VR37', { r: 4.7e6 }],
    ['10k x8 SIL', { r: 10e3 }],
    ['0.47 5W', { r: 0.47 }],
    ['4.7 10W', { r: 4.7 }],
    ['.47 5W', { r: 0.47 }],
    ['0.47', { c: 470 * n }],
    // Letters of a film that are as well a unit.
    ['10 MF 450', { c: 10 * u, volts: 450 }],
    ['.1 MF 400', { c: 100 * n, volts: 400 }],
    // Per cents in full go with figures that are no code, wherever they stand.
    ['180 5% 500', { c: 180 * p, within: 0.05, volts: 500 }],
    ['100 ± 1%', { c: 100 * p, within: 0.01 }],
    ['104 10%', { c: 100 * n, within: 0.1 }],
    ['0.47 ± 10', { c: 470 * n, within: 0.1 }],
    ['1% 10k', { r: 10e3, within: 0.01 }],
    ['5 % 4.7K', { r: 4700, within: 0.05 }],
    // A sign between value and volts.
    ['100µF x 25V', { c: 100 * u, volts: 25 }],
    ['100 µF × 25 V', { c: 100 * u, volts: 25 }],
    ['К50-6 100мк×25В', { c: 100 * u, volts: 25, types: ['al-electrolytic-wet'] }],
    ['К52-1 100×16', { c: 100 * u, volts: 16, types: ['ta-wet'] }],
    ['16 µF x 450/525V', { c: 16 * u, volts: 450 }],
    ['47uF@450V', { c: 47 * u, volts: 450 }],
    ['47uf,450v', { c: 47 * u, volts: 450 }],
    ['16MF 450VW PK500V', { c: 16 * u, volts: 450 }],
    // A voltage with a sign behind the rating is that of a rail.
    ['470/25 +12 V', { c: 470 * u, volts: 25 }],
    ['47uF 25V -15V', { c: 47 * u, volts: 25 }],
    ['10µF +25V', { c: 10 * u, volts: 25 }],
    ['6800pF PP 630V', { c: 6.8 * n, volts: 630, types: ['pp-metallized', 'pp-film-foil'] }],
    // The letter of a tolerance at once behind the volts.
    ['226 16K', { c: 22 * u, volts: 16, within: 0.1 }],
    ['475 25K', { c: 4.7 * u, volts: 25, within: 0.1 }],
    ['103 50K', { c: 10 * n, volts: 50, within: 0.1 }],
    // Run together: a word behind the volts that no gap parts from them.
    ['0.1K250MKT', { c: 100 * n, within: 0.1, volts: 250, types: ['pet-metallized'] }],
    ['0.1K250VMKT', { c: 100 * n, within: 0.1, volts: 250, types: ['pet-metallized'] }],
    ['0.1/250MKT', { c: 100 * n, volts: 250, types: ['pet-metallized'] }],
    ['100n63VMKS', { c: 100 * n, volts: 63, types: ['pet-metallized'] }],
    ['0.22MKP400', { c: 220 * n, volts: 400, types: ['pp-metallized'] }],
    ['22nJ630VMKP', { c: 22 * n, within: 0.05, volts: 630, types: ['pp-metallized'] }],
    ['104M50VX7R', { c: 100 * n, within: 0.2, volts: 50, types: ['ceramic-x7r'] }],
    ['104K100VX7R', { c: 100 * n, within: 0.1, volts: 100, types: ['ceramic-x7r'] }],
    ['103M1KVZ5U', { c: 10 * n, within: 0.2, volts: 1000, types: ['ceramic-z5u'] }],
    // Words of other languages for what it is and what it is made of.
    ['0,1uF 250V Folie', { c: 100 * n, volts: 250, types: ['film-unknown'] }],
    ['Kerko 10n', { c: 10 * n, types: ['ceramic-disc-unknown'] }],
    ['Tantalperle 4,7µF 35V', { c: 4.7 * u, volts: 35, types: ['ta-mno2-solid'] }],
    ['Papier 0.1 mF 400V', { c: 100 * n, volts: 400 }],
    ['condensateur 22nF 250V', { c: 22 * n, volts: 250 }],
    ['100uF 25V chimique', { c: 100 * u, volts: 25, types: ['al-electrolytic-wet'] }],
    ['100pF céramique', { c: 100 * p, types: ['ceramic-disc-unknown'] }],
    ['condensatore 100uF 35V elettrolitico', { c: 100 * u, volts: 35 }],
    ['tántalo 10uF 25V', { c: 10 * u, volts: 25, types: ['ta-mno2-solid'] }],
    ['Draht 10R 5W', { r: 10 }],
    ['4,7k Kohleschicht 1/4W', { r: 4700 }],
    ['10k Metallschicht 1%', { r: 10e3, within: 0.01 }],
    ['220 Kohleschicht', { r: 220 }],
    ['résistance bobinée 10 ohms 5W', { r: 10 }],
    ['resistenza a filo 4,7 ohm 7W', { r: 4.7 }],
    ['220 resistor', { r: 220 }],
    ['47k ajustable', { r: 47e3 }],
    // A rating and a comma of the 1960s, a fraction of a watt without its unit, per cents without a nought.
    ['320/6,4', { c: 320 * u, volts: 6.4 }],
    ['22/6,3 Tantal', { c: 22 * u, volts: 6.3, types: ['ta-mno2-solid'] }],
    ['22k 1/4', { r: 22e3 }],
    ['4.7K 1/8', { r: 4700 }],
    ['4.7k 5% 1/4', { r: 4700, within: 0.05 }],
    ['100R 1/2', { r: 100 }],
    ['10K .1%', { r: 10e3, within: 0.001 }],
    ['0.1 cer', { c: 100 * n, types: ['ceramic-disc-unknown'] }],
    ['2200/25 Ladeelko', { c: 2200 * u, volts: 25, types: ['al-electrolytic-wet'] }],
    ['variable capacitor 365pF', { c: 365 * p, types: ['air-variable'] }],
    // Latin letters typed for Cyrillic ones behind a Soviet style.
    ['K50-12 200.0 25B', { c: 200 * u, volts: 25, types: ['al-electrolytic-wet'] }],
    ['К50-12 200.0 25B', { c: 200 * u, volts: 25, types: ['al-electrolytic-wet'] }],
    ['K73-17 0.47 63B', { c: 470 * n, volts: 63, types: ['pet-metallized'] }],
    // E for ohms behind a nought, watts in small letters, and the code of a chip that is no volt.
    ['0E47', { r: 0.47 }],
    ['1 ohm 3w', { r: 1 }],
    ['56k 1/2w', { r: 56e3 }],
    ['1V 225', { c: 2.2 * u, volts: 35 }],
    ['1M 35V bead', { c: u, volts: 35, types: ['ta-mno2-solid'] }],
    ['3900pF 2% PS', { c: 3.9 * n, within: 0.02, types: ['ps-film-foil'] }],
    ['100 N.P. 50', { c: 100 * u, volts: 50, types: ['al-electrolytic-bipolar'] }],
    ['0.01 600 V.D.C. WKG', { c: 10 * n, volts: 600 }],
    // Megohms as German lists write them, and words in short.
    ['1 MOhm 0,5 W', { r: 1e6 }],
    ['0,5 MOhm lin', { r: 500e3 }],
    ['10 MOHM', { r: 10e6 }],
    ['10 mOhm', { r: 0.01 }],
    ['10 uF, 35 V Ta.', { c: 10 * u, volts: 35, types: ['ta-mno2-solid'] }],
    ['0,1 uF ker.', { c: 100 * n, types: ['ceramic-disc-unknown'] }],
    ['0,05 µF Wachs 500V', { c: 50 * n, volts: 500, types: ['paper-wax'] }],
    // A letter with a gap that is seldom a tolerance.
    ['470 P', { c: 470 * p }],
    ['33 P 500V', { c: 33 * p, volts: 500 }],
    ['0.1 X 250V', { c: 100 * n, volts: 250, types: ['paper-x-safety', 'film-x2'] }],
    ['2,2 µF / 50 V bip.', { c: 2.2 * u, volts: 50, types: ['al-electrolytic-bipolar'] }],
    ['SM 100 5% 500V', { c: 100 * p, within: 0.05, volts: 500, types: ['silvered-mica'] }],
  ])('%s', (text, { c, r, volts, within, types }) => {
    const [best] = readMarking(catalogue, text);
    expect(best?.kind).toBe(r === undefined ? 'capacitor' : 'resistor');
    expect((best?.capacitance ?? best?.resistance)?.typ).toBeCloseTo(c ?? r ?? NaN, 15);
    expect(best?.ratedVoltage?.typ).toBe(volts);
    if (within !== undefined)
      expect(best?.tolerance).toEqual({ minus: within, plus: within, unit: 'fraction' });
    if (types !== undefined) expect(best?.types).toEqual(types);
    expect(best?.notUnderstood).toEqual([]);
  });

  test('a sign between sections stays what it is', () => {
    const [best] = readMarking(catalogue, '2 x 50 µF 350/385V');
    expect(best?.sections?.map(({ capacitance }) => capacitance.typ)).toEqual([50e-6, 50e-6]);
    expect(best?.ratedVoltage?.typ).toBe(350);
  });

  test.each(['2x8 500V', '2X8 500V', '8+8 500V'])(
    '%s has two sections, and no other reading',
    (text) => {
      const [best, ...others] = readMarking(catalogue, text);
      expect(best?.sections?.map(({ capacitance }) => capacitance.typ)).toEqual([8e-6, 8e-6]);
      expect(others).toEqual([]);
    },
  );

  test('a word of letters alone is no value, whatever figures its letters look like', () => {
    const [best] = readMarking(catalogue, 'X2 capacitor smoke');
    expect(best?.capacitance).toBeUndefined();
    expect(best?.safetyClass).toBe('X2');
  });

  test('a trimmer has no range from hundredths of a picofarad on', () => {
    const [best] = readMarking(catalogue, '.022-6');
    expect(best?.capacitance?.typ).toBeCloseTo(22 * n, 15);
    const { min, max } = readMarking(catalogue, '0.5-5')[0]?.capacitance ?? {};
    expect([min, max]).toEqual([0.5e-12, 5e-12]);
  });
});

test('designators that a marking may begin with are those of parts lists', () => {
  const kinds = new Map(
    catalogue.job.designatorLetters.map(({ letters, kind }) => [letters, kind]),
  );
  const bodies = new Map(catalogue.markings.bodies.map(({ id, kind }) => [id, kind]));
  const listed = catalogue.markings.bodyMarks.filter(({ group }) => group === 'designator');
  expect(listed.length).toBeGreaterThan(0);
  for (const { mark, bodies: own } of listed) {
    const isCapacitor = own.every((id) => bodies.get(id) === 'capacitor');
    const kind = kinds.get(mark);
    expect([mark, kind === 'capacitor']).toEqual([mark, isCapacitor]);
    expect(['capacitor', 'resistor', 'trimmer', 'pot']).toContain(kind);
  }
});

// 2W is the code for 450 V of IEC and EIA lists, and two watts on a resistor; W a tolerance seldom met.
describe('a W behind figures', () => {
  test.each([
    ['1/2W', 0.5],
    ['1/2w', 0.5],
    ['1/4 W', 0.25],
    ['0.25W', 0.25],
    ['0,5W', 0.5],
    ['.5W', 0.5],
    ['5W', 5],
  ])('by itself is watts: %s', (text, watts) => {
    const [best] = readMarking(catalogue, text);
    expect([best?.kind, best?.power?.typ, best?.capacitance]).toEqual([
      'resistor',
      watts,
      undefined,
    ]);
  });

  test.each([
    ['2W474J', 470 * n, 450],
    ['2W103K', 10 * n, 450],
  ])('is a voltage code before a code of three figures: %s', (text, farad, volts) => {
    const [best] = readMarking(catalogue, text);
    expect(best?.capacitance?.typ).toBeCloseTo(farad, 15);
    expect(best?.ratedVoltage?.typ).toBe(volts);
    expect(best?.sure).not.toBe('possible');
  });

  test.each([
    ['5W10RJ', 10, 5],
    ['10W4K7J', 4700, 10],
    ['5W100', 100, 5],
  ])('is watts before ohms: %s', (text, ohms, watts) => {
    const [best] = readMarking(catalogue, text);
    expect([best?.resistance?.typ, best?.power?.typ]).toEqual([ohms, watts]);
  });
});

// Common practice, no source: K and M behind a value with a point are its thousand and million.
test.each([
  ['2.2M 1W carbon composition', 2.2e6],
  ['4.7M 1W', 4.7e6],
  ['2.2K 1W', 2200],
  ['0.47M 5W', 470e3],
  ['3,3K wirewound', 3300],
])('no tolerance stands behind a point: %s', (text, ohms) => {
  const [best] = readMarking(catalogue, text);
  expect(best?.resistance?.typ).toBeCloseTo(ohms, 6);
  expect(best?.sure).not.toBe('possible');
});
