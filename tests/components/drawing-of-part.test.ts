import { describe, expect, it, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import {
  drawingOfPart,
  looksOfType,
  sidesInShort,
  sizesOfLook,
  type PartToDraw,
} from '../../src/drawing/index.ts';
import { printedOn } from '../../src/drawing/printed-on.ts';
import { readColours, readMarking } from '../../src/engine/index.ts';

const catalogue = loadCatalogue();
const types = Object.values(catalogue.types);
const looks = types.flatMap(({ id }) => looksOfType(catalogue, id));

describe.each(types)('$id', (type) => {
  it('is drawn, and with marks of polarity only where it is polar', () => {
    const own = looksOfType(catalogue, type.id);
    expect(own.length).toBeGreaterThan(0);
    for (const { spec } of own) {
      const polar = spec.polarity !== undefined && spec.polarity !== 'outer-foil-band';
      if (polar) expect(type.polarity).toBe('polar');
    }
  });

  it('is drawn as a part of its usual value and voltage', () => {
    const capacitance = Math.sqrt(type.old_c_min * type.old_c_max);
    const drawn = drawingOfPart(catalogue, {
      type: type.id,
      capacitance,
      ratedVoltage: type.old_v_typical,
    });
    expect(drawn?.spec.length).toBeGreaterThan(0);
  });
});

const named = looks.map((drawn) => ({ ...drawn, what: `${drawn.look.type}, ${drawn.look.style}` }));

describe('what is printed on a look reads as the part that it is', () => {
  const printed = named.filter(({ look }) => look.marking.some((line) => line.includes('{')));

  test.each(printed)('$what: $spec.marking', ({ spec, look }) => {
    // Each line of a can of sections is the marking of one section.
    const lines = (spec.marking ?? []).slice(0, spec.form === 'multi-can' ? 1 : undefined);
    const text = lines.join('\n');
    const readings = readMarking(catalogue, text, { type: look.type });
    const [best] = readings.filter(({ capacitance }) => capacitance !== undefined);
    expect(best?.capacitance?.typ).toBeCloseTo(look.capacitance, 15);
    if (/\{volts/.test(look.marking.join())) expect(best?.ratedVoltage?.typ).toBe(look.volts);
  });
});

describe('the colours of a look read as the part that it is', () => {
  const FORMS: Readonly<Record<string, string>> = {
    dipped: 'film-stripes',
    moulded: 'moulded-block',
    'ceramic-tube': 'ceramic-tube',
    axial: 'moulded-tube',
  };
  const coloured = named.filter(
    ({ spec }) => (spec.bands ?? []).length + (spec.dots ?? []).length > 0,
  );

  test.each(coloured)('$what', ({ spec, look }) => {
    const colours = [...(spec.bands ?? []), ...(spec.dots ?? [])];
    const readings = readColours(catalogue, { form: FORMS[spec.form] ?? '', colours });
    expect(readings.map(({ capacitance }) => capacitance?.typ.toPrecision(4))).toContain(
      look.capacitance.toPrecision(4),
    );
  });

  it('is asked of several', () => {
    expect(coloured.length).toBeGreaterThan(3);
  });
});

describe('a part', () => {
  test.each([
    [
      'has its listed body',
      { type: 'al-electrolytic-wet', style: 'radial can', capacitance: 1e-4, ratedVoltage: 25 },
      { form: 'can', sides: 'listed', short: '⌀5 × 11 mm', marking: ['100 µF', '25V'] },
    ],
    [
      'takes the form of its style',
      { type: 'al-electrolytic-wet', style: 'snap-in can', capacitance: 8.2e-5, ratedVoltage: 250 },
      { form: 'snap-in', sides: 'listed', short: '⌀20 × 20 mm', marking: ['82 µF', '250V'] },
    ],
    [
      'takes the form of its shape within a style',
      { type: 'pp-motor-run', capacitance: 4e-6, ratedVoltage: 450 },
      {
        form: 'box',
        sides: 'listed',
        short: '36 × 18 × 30 mm',
        marking: ['4 µF', '450V~ 50 Hz'],
      },
    ],
    [
      'is printed with its tolerance',
      {
        type: 'pet-film-foil',
        capacitance: 2.2e-9,
        ratedVoltage: 200,
        tolerance: { minus: 0.1, plus: 0.1 },
      },
      { form: 'dipped', sides: 'listed', marking: ['222K', '200V'] },
    ],
  ] satisfies [string, PartToDraw, object][])('%s', (_, part, expected) => {
    const drawn = drawingOfPart(catalogue, part);
    expect({
      form: drawn?.spec.form,
      sides: drawn?.sides,
      short: drawn && sidesInShort(drawn.spec).replaceAll('\u00A0', ' '),
      marking: drawn?.spec.marking?.map((line) => line.replaceAll('\u00A0', ' ')),
    }).toMatchObject(expected);
  });

  it('that is not listed grows with what it holds', () => {
    const sized = (capacitance: number) =>
      drawingOfPart(catalogue, { type: 'metallized-paper', capacitance, ratedVoltage: 250 });
    const [small, large] = [sized(1e-7), sized(8e-7)];
    expect(small?.sides).toBe('estimated');
    const ratio = (large?.spec.length ?? 0) / (small?.spec.length ?? 1);
    expect(ratio).toBeGreaterThan(1.5);
    expect(ratio).toBeLessThan(2.5);
  });

  it('of a type that there is not is not drawn', () => {
    expect(
      drawingOfPart(catalogue, { type: 'no-such-type', capacitance: 1e-9, ratedVoltage: 50 }),
    ).toBeUndefined();
  });
});

describe('the smallest and the largest size of a look', () => {
  const sized = looks.filter(({ look }) => sizesOfLook(catalogue, look).length > 0);

  it.each(sized)('$look.type, $look.style', ({ look }) => {
    const [small, large] = sizesOfLook(catalogue, look).map(
      ({ spec: { length, width, height } }) => length * width * height,
    );
    expect(large).toBeGreaterThan(small ?? Infinity);
  });
});

describe('what is printed', () => {
  const part = { capacitance: 4.7e-8, ratedVoltage: 400, tolerance: { minus: 0.1, plus: 0.1 } };

  test.each([
    [['{figures}{tolerance:letter}'], part, ['473K']],
    [['{figures}'], { capacitance: 4.7e-11 }, ['470']],
    [['{figures}'], { capacitance: 2.2e-12 }, ['2.2']],
    [['{figures}'], { capacitance: 1e-7 }, ['104']],
    [['{letter}'], { capacitance: 4.7e-9 }, ['4n7']],
    [['{letter}'], { capacitance: 1e-6 }, ['1µ0']],
    [['{decimal}'], part, ['.047']],
    [['{plain}'], { capacitance: 3.3e-10 }, ['330']],
    [['{plain}'], { capacitance: 1e-5 }, ['10']],
    [['{unit:µF} {tolerance:percent}', '{volts:V DC}'], part, ['0.047 µF 10%', '400 V DC']],
    [['{unit:MFD}'], part, ['.047 MFD']],
    [['{figures}{tolerance:letter}', '{volts:V}'], { capacitance: 4.7e-8 }, ['473']],
    [['{volts:kV}'], { capacitance: 1e-9, ratedVoltage: 1000 }, ['1kV']],
    [['{tolerance:letter}'], { ...part, tolerance: { minus: 0.2, plus: 0.8 } }, ['Z']],
    [['MKT {no:such}'], part, ['MKT']],
  ])('%j of %j', (lines, printed, expected) => {
    const found = printedOn(catalogue, lines, printed);
    expect(found.map((line) => line.replaceAll('\u00A0', ' '))).toEqual(expected);
  });
});

test.each([
  [4.7e-12, '4.7'],
  [10e-12, '100'],
  [99e-12, '990'],
  [4.7e-9, '472'],
  [9.1e-9, '912'],
  [0.1e-6, '104'],
  [1e-6, '105'],
  [1.18e-9, '1181'],
  [9.97e-9, '9971'],
])('%s F in figures is %s', (capacitance, text) => {
  expect(printedOn(catalogue, ['{figures}'], { capacitance })).toEqual([text]);
  const [reading] = readMarking(catalogue, text, { kind: 'capacitor' });
  expect((reading?.capacitance?.typ ?? 0) / capacitance).toBeCloseTo(1, 6);
});
