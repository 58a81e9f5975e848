import { describe, expect, test } from 'vitest';
import { readMarking, type Hints } from '../../../src/engine/markings/index.ts';
import { catalogue } from './tables.ts';

const u = 1e-6;
const n = 1e-9;
const p = 1e-12;

/** A section as µF, volts, and its sign. */
type Short = [microfarads: number, volts?: number | undefined, symbol?: string];

const sections: [string, Short[]][] = [
  [
    '16+16+8 µF 450 V',
    [
      [16, 450],
      [16, 450],
      [8, 450],
    ],
  ],
  [
    '16 µF + 16 µF 450V',
    [
      [16, 450],
      [16, 450],
    ],
  ],
  [
    '50-50-25 µF 350 V',
    [
      [50, 350],
      [50, 350],
      [25, 350],
    ],
  ],
  [
    '40/40 µF 350V',
    [
      [40, 350],
      [40, 350],
    ],
  ],
  [
    '2×100 µF 63 V',
    [
      [100, 63],
      [100, 63],
    ],
  ],
  [
    '32+32/350',
    [
      [32, 350],
      [32, 350],
    ],
  ],
  ['16+16', [[16], [16]]],
  [
    '0.1+0.1 µF 250V',
    [
      [0.1, 250],
      [0.1, 250],
    ],
  ],
  [
    '40 MFD 450 VDC\n20 MFD 25 VDC',
    [
      [40, 450],
      [20, 25],
    ],
  ],
  [
    '40-20 µF 450 V, 20 µF 25 V',
    [
      [40, 450],
      [20, 450],
      [20, 25],
    ],
  ],
  [
    '▲ 40 MFD 450V\n■ 20 MFD 450V\n◗ 20 MFD 25V\n10 MFD 25V',
    [
      [40, 450, 'triangle'],
      [20, 450, 'square'],
      [20, 25, 'half moon'],
      [10, 25],
    ],
  ],
  [
    '40 µF ▲ 450V 20 µF ■ 300V',
    [
      [40, 450, 'triangle'],
      [20, 300, 'square'],
    ],
  ],
  [
    '□ 40 △ 20 ◗ 10 450V',
    [
      [40, 450, 'square'],
      [20, 450, 'triangle'],
      [10, 450, 'half moon'],
    ],
  ],
  [
    '▲40-■20-20 MFD 450V',
    [
      [40, 450, 'triangle'],
      [20, 450, 'square'],
      [20, 450],
    ],
  ],
  [
    '△40/□20 µF 350V',
    [
      [40, 350, 'triangle'],
      [20, 350, 'square'],
    ],
  ],
  [
    '■ 50 + ▲ 30 + 20 MFD 450 VDC',
    [
      [50, 450, 'square'],
      [30, 450, 'triangle'],
      [20, 450],
    ],
  ],
  [
    'half moon 20 µF 350V plain 10 µF 350V',
    [
      [20, 350, 'half moon'],
      [10, 350, 'plain'],
    ],
  ],
];

describe('a can of several sections', () => {
  test.each(sections)('%j', (text, wanted) => {
    const [best] = readMarking(catalogue, text);
    expect(best?.capacitance).toBeUndefined();
    expect(best?.notUnderstood).toEqual([]);
    expect(
      best?.sections?.map(({ capacitance, ratedVoltage, symbol }) => [
        Number((capacitance.typ / u).toPrecision(6)),
        ratedVoltage?.typ,
        symbol,
      ]),
    ).toEqual(wanted.map(([microfarads, volts, symbol]) => [microfarads, volts, symbol]));
  });

  test('the letter of a tolerance behind the sections is that of all', () => {
    const [best] = readMarking(catalogue, '16+16 µF M 450V');
    expect(best).toMatchObject({ notUnderstood: [], tolerance: { minus: 0.2, plus: 0.2 } });
    expect(best?.sections?.[1]?.capacitance.max).toBeCloseTo(19.2 * u, 12);
  });

  test('a value that no section has is no sure section', () => {
    expect(readMarking(catalogue, '104/1uF')[0]?.sure).toBe('possible');
  });

  test('the rating of the whole is that of all sections, or none', () => {
    expect(readMarking(catalogue, '16+16 µF 450 V')[0]?.ratedVoltage?.typ).toBe(450);
    expect(readMarking(catalogue, '40 µF 450V 20 µF 25V')[0]?.ratedVoltage).toBeUndefined();
  });

  test.each(['22/16', '100/25', '350/500V 8uF', '10 µF 63 V', '+ 47µ 16V'])(
    '%j has one section',
    (text) => {
      expect(readMarking(catalogue, text)[0]?.sections).toBeUndefined();
    },
  );

  test('picofarads with a stroke between are the range of a trimmer', () => {
    expect(readMarking(catalogue, '4-20 pF')[0]?.capacitance).toEqual({
      min: 4 * p,
      typ: 12 * p,
      max: 20 * p,
    });
  });
});

/** Markings with a rating and a voltage that is none, in either order. */
const voltages: [string, number | undefined, Hints?][] = [
  ['8 MFD 450 W.V. 525 SURGE', 450],
  ['8 µF 450V SURGE 525V', 450],
  ['8µF 525V SURGE 450V DC', 450],
  ['4 µF 350 V. WKG. 500V TEST', 350],
  ['.1 400V 1000V TEST', 400],
  ['1000V TEST .01', undefined],
  ['0.1 µF TV 1500', undefined],
  ['0,1 µF Nennspannung 500 V Prüfspannung 1500 V', 500],
  ['5000 pF Prüfspg. 1500 V', undefined],
  ['T.S. 500V T.E. 1500V 0,1 µF', 500, { origin: 'french' }],
  ['0,1 µF 250/750V', 250],
  ['8uF 350-500V', 350],
  ['8 µF 350V-385V', 350],
  ['8uF 450-525 VDC', 450],
];

describe('a voltage that is no rating', () => {
  test.each(voltages)('%j is rated %d V', (text, volts, hints) => {
    const [best] = readMarking(catalogue, text, hints);
    expect(best?.ratedVoltage?.typ).toBe(volts);
    expect(best?.notUnderstood).toEqual([]);
  });

  test('a rating for ac stands beside that for dc', () => {
    const [best] = readMarking(catalogue, '.1 µF 250V~ 1000V=');
    expect(best?.ratedVoltage?.typ).toBe(1000);
    expect(best?.voltageKind).toBe('dc');
    expect(best?.acVoltage?.typ).toBe(250);
  });
});

/** Units and habits of old, as F. */
const old: [string, Hints, number][] = [
  ['.02 MF 600', {}, 20 * n],
  ['1000 MMF 500V', {}, 1 * n],
  ['250µµF', {}, 250 * p],
  ['500 cm 1500V', {}, 556.325 * p],
  ['2 jars', {}, 2.222 * n],
  ['3K3', { body: 'ceramic', origin: 'british' }, 3.3 * n],
  ['.1K250', {}, 100 * n],
  ['0·05 µF', {}, 50 * n],
  ['m33', { origin: 'soviet' }, 330 * n],
  ['n332', {}, 332 * p],
  ['CM05FD101J', {}, 100 * p],
  ['CK05BX104K', {}, 100 * n],
];

describe('old units and habits', () => {
  test.each(old)('%j with %j', (text, hints, value) => {
    const [best] = readMarking(catalogue, text, hints);
    expect((best?.capacitance?.typ ?? NaN) / value).toBeCloseTo(1, 6);
  });

  test('figures without a unit are plain picofarads before about 1970', () => {
    const early = { era: { from: 1950, to: 1964 } };
    expect(readMarking(catalogue, '470', early)[0]?.capacitance?.typ).toBe(470 * p);
    const late = { era: { from: 1980, to: 1995 }, body: 'ceramic' };
    expect(readMarking(catalogue, '470', late)[0]?.capacitance?.typ).toBe(47 * p);
  });
});

describe('a line under the value', () => {
  test('says the voltage of a disc', () => {
    const [best] = readMarking(catalogue, '104', { underlined: true });
    expect(best?.ratedVoltage).toMatchObject({ min: 50, max: 100 });
    expect(best?.evidence.at(-1)).toMatchObject({ text: '', at: 3 });
  });

  test('says nothing where a voltage is printed, or on film', () => {
    expect(readMarking(catalogue, '104 63V', { underlined: true })[0]?.ratedVoltage?.typ).toBe(63);
    const film = readMarking(catalogue, '104', { underlined: true, body: 'film' });
    expect(film[0]?.ratedVoltage).toBeUndefined();
  });

  test('that there is none is told, but is no rating', () => {
    const [best] = readMarking(catalogue, '104', { underlined: false, body: 'ceramic' });
    expect(best?.ratedVoltage).toBeUndefined();
    expect(best?.evidence.map(({ means }) => means).join()).toContain('not underlined');
  });

  test('says one per cent on a chip resistor', () => {
    const [best] = readMarking(catalogue, '473', { underlined: true, body: 'resistor-chip' });
    expect(best?.tolerance?.plus).toBe(0.01);
  });
});
