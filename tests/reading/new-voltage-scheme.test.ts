import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { readMarking, waysPrinted, type Catalogue } from '../../src/engine/index.ts';
import { toHtml } from '../../src/markup/to-html.ts';
import { codePage, listedCodes } from '../../src/reading/codes/index.ts';

/** A way of writing the rated voltage that the tables gain by two rows, and no code knows of. */

const catalogue = loadCatalogue();

type Scheme = Catalogue['markings']['voltageSchemes'][number];

interface New {
  stands: Scheme['stands'];
  code: string;
  where?: string;
}

/** Volts that no other code says. */
const VOLTS = 77;

/** The tables with an invented scheme that has one code. */
const withScheme = ({ stands, code, where = '' }: New, volts = VOLTS): Catalogue => {
  const { markings } = catalogue;
  const [scheme] = markings.voltageSchemes;
  const [row] = markings.voltageCodes;
  if (scheme === undefined || row === undefined) throw new Error('no row to begin with');
  const own = { ...scheme, id: 'invented', name: 'invented', stands, where };
  const ownCode = { ...row, scheme: 'invented', code, volts_min: volts, volts_max: volts };
  return {
    ...catalogue,
    markings: {
      ...markings,
      voltageSchemes: [...markings.voltageSchemes, own],
      voltageCodes: [...markings.voltageCodes, ownCode],
    },
  };
};

const voltsIn = (tables: Catalogue, marking: string): (number | undefined)[] =>
  readMarking(tables, marking, { kind: 'capacitor' }).map(({ ratedVoltage }) => ratedVoltage?.typ);

describe('is read where its row says that it stands, and nowhere else', () => {
  test.each<[New['stands'], code: string, read: string[], not: string[]]>([
    ['beside', '8T', ['8T104', '104K 8T', '104k 8t'], ['1048T2']],
    ['before-figures', 'L', ['L106'], ['106 L', '10L']],
    ['behind-figures', 'L', ['106L'], ['1206L', 'L106']],
    ['behind-tolerance', 'q', ['4n7Kq', 'n47Jq'], ['q104', '4n7KQ']],
    ['behind-tolerance', '077', ['475K077', '475X9077B2'], ['475K0770', '475 077']],
    ['behind-temperature', 'q', ['470JNq', '33nJMq'], ['470Jq', '470q']],
    ['behind-value', '77', ['4n7 77', '.33K77'], ['77']],
    ['by-itself', 'boxed', ['103 boxed', '103 BOXED'], ['103 box']],
  ])('%s: %s', (stands, code, read, not) => {
    const tables = withScheme({ stands, code });
    for (const marking of read) expect(voltsIn(tables, marking), marking).toContain(VOLTS);
    for (const marking of read) expect(voltsIn(catalogue, marking), marking).not.toContain(VOLTS);
    for (const marking of not) expect(voltsIn(tables, marking), marking).not.toContain(VOLTS);
  });

  test('a code of a scheme that has no row is not read', () => {
    const tables = withScheme({ stands: 'beside', code: '8T' });
    const { voltageSchemes } = catalogue.markings;
    const without = { ...tables, markings: { ...tables.markings, voltageSchemes } };
    expect(voltsIn(without, '8T104')).not.toContain(VOLTS);
  });
});

test('is printed where an arrangement names it', () => {
  const tables = withScheme({ stands: 'behind-tolerance', code: 'q' });
  const [arrangement] = tables.markings.arrangements;
  if (arrangement === undefined) throw new Error('no arrangement to begin with');
  const pattern = '{value}{tolerance:letter}{voltage:invented}';
  const own = { ...arrangement, id: 'invented', pattern, values: [], bodies: [], origins: [] };
  const arrangements = [...tables.markings.arrangements, own];
  const ways = waysPrinted(
    { ...tables, markings: { ...tables.markings, arrangements } },
    {
      capacitance: 4.7e-9,
      ratedVoltage: VOLTS,
      tolerance: { minus: 0.1, plus: 0.1, unit: 'fraction' },
    },
  );
  expect(ways.map(({ text }) => text)).toContain('4n7Kq');
});

describe('is said on the pages of codes', () => {
  const pageOf = (tables: Catalogue, kind: string, code: string): string => {
    const codes = listedCodes(tables);
    const own = codes.find((one) => one.kind === kind && one.code === code);
    if (own === undefined) return '';
    return codePage(tables, own, codes)
      .sections.flatMap(({ content }) => content)
      .map(toHtml)
      .join('');
  };
  const where = 'under the value, on invented parts';

  test('beside other codes of that voltage, where it is a code', () => {
    const said = withScheme({ stands: 'behind-tolerance', code: 'q', where }, 100);
    expect(pageOf(said, 'voltage', '2A')).toContain(`>q</code></th><td>${where}</td>`);
    expect(pageOf(catalogue, 'voltage', '2A')).not.toContain(where);
    const unsaid = withScheme({ stands: 'by-itself', code: 'boxed' }, 100);
    expect(pageOf(unsaid, 'voltage', '2A')).not.toContain('boxed');
  });

  test.each<[New['stands'], shown: string | undefined]>([
    ['before-figures', 'K106'],
    ['behind-figures', '106K'],
    ['behind-tolerance', undefined],
  ])('of its letter, where that stands beside figures: %s', (stands, shown) => {
    const page = pageOf(withScheme({ stands, code: 'K', where }), 'letter', 'K');
    expect(page.includes(where)).toBe(shown !== undefined);
    if (shown !== undefined)
      expect(page).toContain(`<code>${shown}</code></th><td>77\u00a0V rated</td>`);
  });

  test('by a page of its own, where it stands on either side of a value', () => {
    expect(pageOf(withScheme({ stands: 'beside', code: '8T' }), 'voltage', '8T')).toContain('8T');
    expect(pageOf(withScheme({ stands: 'before-figures', code: '8T' }), 'voltage', '8T')).toBe('');
  });
});
