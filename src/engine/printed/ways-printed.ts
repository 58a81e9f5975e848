import type { ArrangementRow } from '../../schemas/marking-print.ts';
import type { Catalogue } from '../catalogue.ts';
import { isMetInBody } from '../markings/composing/in-body.ts';
import { inOrderOfUse, rarer } from '../markings/meanings/use.ts';
import { piecesFor } from './beside.ts';
import { common } from '../common.ts';
import { isTaken, takenWords, type TakenWords } from './taken-words.ts';
import { valuesPrinted } from './values.ts';
import type { PartToPrint, Piece, ValuePiece, Way } from './way.ts';

/** What printing a marking needs of the catalogue. */
export type PrintingCatalogue = Pick<Catalogue, 'markings' | 'types' | 'series'>;

const PLACE = /\{([^}]+)\}/;

const shown = {
  tolerance: 'tolerance',
  voltage: 'voltage',
  volts: 'voltage',
  temperature: 'temperature',
  dielectric: 'dielectric',
  taper: 'taper',
} as const;

/** A marking that grows place by place. */
type Growing = Omit<Way, 'sources' | 'notes'> & {
  sources: string[];
  notes: string[];
  otherwiseAlone: readonly string[];
};

const begun = (
  piece: ValuePiece,
  { use, bodies, origins, source, note }: ArrangementRow,
  { codes }: TakenWords,
): Growing | undefined => {
  const together = common(piece.bodies, bodies);
  const places = common(piece.origins, origins);
  if (together === undefined || places === undefined) return undefined;
  // 1П33 is 1 pF of a slope, and not 1.33 pF.
  const [end = ''] = LETTER_AND_FIGURES.exec(piece.text) ?? [];
  if (codes.has(end.toUpperCase())) return undefined;
  return {
    text: '',
    value: piece.text,
    writing: piece.writing,
    means: piece.means,
    shows: [],
    use: rarer(piece.use, use),
    bodies: together,
    origins: places,
    notes: [piece.note, note],
    sources: [piece.source, source],
    otherwiseAlone: piece.otherwiseAlone ?? [],
  };
};

const LETTER_AND_FIGURES = /\p{L}\d+$/u;

const grown = (
  way: Growing,
  piece: Piece,
  place: string,
  taken: TakenWords,
): Growing | undefined => {
  const bodies = common(way.bodies, piece.bodies);
  const origins = common(way.origins, piece.origins);
  const kind = place.split(':')[0] as keyof typeof shown;
  if (bodies === undefined || origins === undefined) return undefined;
  if (isTaken(taken, way.text, piece.text)) return undefined;
  if (piece.besides?.test(way.value) === false) return undefined;
  return {
    ...way,
    text: way.text + piece.text,
    shows: [...way.shows, shown[kind]],
    use: rarer(way.use, piece.use),
    bodies,
    origins,
    notes: [...way.notes, piece.note],
    sources: [...way.sources, piece.source],
  };
};

/** Every filling of an arrangement's places, for one way of writing the value. */
const filled = (
  piece: ValuePiece,
  row: ArrangementRow,
  piecesOf: (place: string) => readonly Piece[],
  taken: TakenWords,
): Growing[] => {
  const start = begun(piece, row, taken);
  if (start === undefined) return [];
  return row.pattern.split(PLACE).reduce<Growing[]>(
    (ways, part, index) => {
      if (index % 2 === 0) return ways.map((way) => ({ ...way, text: way.text + part }));
      if (part === 'value') return ways.map((way) => ({ ...way, text: way.text + piece.text }));
      return ways.flatMap((way) =>
        piecesOf(part).flatMap((one) => grown(way, one, part, taken) ?? []),
      );
    },
    [start],
  );
};

/** Nobody mixes Cyrillic letters with those of our alphabet in one mark. */
const mixesScripts = (text: string): boolean =>
  /\p{Script=Cyrillic}/u.test(text) && /\p{Script=Latin}/u.test(text);

/** The bodies, in the order of their table, that come in such a value, voltage and type. */
const bodiesFor = (
  { markings, types }: PrintingCatalogue,
  part: PartToPrint,
  bodies: readonly string[],
): string[] => {
  const kind = part.capacitance === undefined ? 'resistor' : 'capacitor';
  const value = part.capacitance ?? part.resistance ?? NaN;
  const { ratedVoltage: volts = 0 } = part;
  const family = types[part.type ?? '']?.family;
  return markings.bodies
    .filter((row) => row.kind === kind && (bodies.length === 0 || bodies.includes(row.id)))
    .filter((row) => isMetInBody(row, value))
    .filter((row) => volts <= row.v_max)
    .filter((row) => family === undefined || row.family === family)
    .map((row) => row.id);
};

const union = <Item>(a: readonly Item[], b: readonly Item[]): Item[] => [...new Set([...a, ...b])];

/** Two ways that come to the same text as one, the more usual leading; it shows what both do. */
const merged = (first: Way, second: Way): Way => ({
  ...first,
  shows: first.shows.filter((one) => second.shows.includes(one)),
  bodies: union(first.bodies, second.bodies),
  origins:
    first.origins.length === 0 || second.origins.length === 0
      ? []
      : union(first.origins, second.origins),
  sources: union(first.sources, second.sources),
});

const eachOnce = (ways: readonly Way[]): Way[] => {
  const byText = new Map<string, Way>();
  for (const way of inOrderOfUse(ways)) {
    const known = byText.get(way.text);
    byText.set(way.text, known === undefined ? way : merged(known, way));
  }
  return [...byText.values()];
};

/** Whether a value is of the series that all parts come in, or was usual before there were any. */
const isCommon = ({ series, markings }: PrintingCatalogue, value: number): boolean => {
  const mantissa = Number(value.toExponential(6).split('e')[0]);
  return [...series.filter((row) => row.series === 'E24'), ...markings.oldMantissas].some(
    (row) => Math.abs(row.value - mantissa) < 1e-6,
  );
};

const arranged = (catalogue: PrintingCatalogue, part: PartToPrint): Growing[] => {
  const { markings: tables } = catalogue;
  const value = part.capacitance ?? part.resistance ?? NaN;
  if (!Number.isFinite(value) || value <= 0) return [];
  const values = valuesPrinted(tables, part, isCommon(catalogue, value));
  const taken = takenWords(tables);
  const known = new Map<string, Piece[]>();
  const piecesOf = (place: string): Piece[] => {
    const pieces = known.get(place) ?? piecesFor(tables, part, place);
    known.set(place, pieces);
    return pieces;
  };
  return values.flatMap((piece) =>
    tables.arrangements
      .filter((row) => row.values.length === 0 || row.values.includes(piece.writing))
      .flatMap((row) => filled(piece, row, piecesOf, taken)),
  );
};

/**
 * Every way in which a part may be marked, by the tables that markings are read with: usual ones
 * first, each text once. A marking need not show all that is known of the part; none where the
 * value is not one that is printed. Nothing is said of words other than those of the tables.
 */
export const waysPrinted = (catalogue: PrintingCatalogue, part: PartToPrint): Way[] => {
  const ways = arranged(catalogue, part)
    .filter((way) => !mixesScripts(way.text))
    .map(({ otherwiseAlone, ...way }) => ({
      ...way,
      bodies: bodiesFor(catalogue, part, way.bodies).filter(
        (body) => way.shows.includes('voltage') || !otherwiseAlone.includes(body),
      ),
      notes: [...new Set(way.notes)].filter((note) => note !== ''),
      sources: [...new Set(way.sources)],
    }))
    .filter((way) => way.bodies.length > 0);
  const inOrder = catalogue.markings.bodies.map((row) => row.id);
  return eachOnce(ways).map((way) => ({
    ...way,
    bodies: inOrder.filter((body) => way.bodies.includes(body)),
  }));
};
