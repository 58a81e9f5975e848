import {
  coloursOf,
  isForm,
  partsDrawing,
  scaleFor,
  sidesInShort,
  type PartSpec,
} from '../drawing/index.ts';
import { resolveSituation, type Catalogue } from '../engine/index.ts';
import { isCapacitor, type SheetStep } from '../job/index.ts';
import { h, type Element } from '../markup/node.ts';
import { drawnParts, SIDES_FROM } from '../substitution/drawn.ts';
import { basisWords, capital } from '../text/words.ts';
import { outlines, type Sketched } from './outline-sketch.ts';

/** The old capacitor and what is fitted, in the look of their types and with their tabulated bodies. */
const capacitors = (
  { planned, action }: SheetStep,
  catalogue: Catalogue | undefined,
  { typeLooks, markings }: Catalogue,
): Sketched[] => {
  const { worked, standIn } = planned;
  if (worked?.request === undefined || catalogue === undefined) return [];
  const fitted = standIn !== undefined && isCapacitor(standIn) ? standIn : undefined;
  const { original } = resolveSituation(catalogue, worked.request);
  const all = { ...catalogue, typeLooks, markings };
  const parts = drawnParts(all, original, action === 'replace' ? fitted : undefined);
  return parts.map(({ spec, name, sides, basis }) => ({
    spec,
    name,
    said: `${SIDES_FROM[sides]} (${basisWords[basis]?.meaning ?? basis})`,
  }));
};

type Notch = NonNullable<PartSpec['notch']>;
const NOTCHES: readonly Notch[] = ['left', 'right', 'up', 'down'];

/** Where the notch points as it was read at the bench; nothing until then. */
const notchOf = (read = ''): Notch | undefined => NOTCHES.find((one) => one === read);

const notchWords = (read: string | undefined): string => {
  const notch = notchOf(read);
  if (notch === undefined) return 'to the left: say which way yours points and it is turned';
  return notch === 'left' || notch === 'right' ? `to the ${notch}` : notch;
};

/** A chip or socket with as many pins as its line says; nothing where it says none. */
const packages = ({ planned, fitted }: SheetStep, { job }: Catalogue): Sketched[] => {
  const { kind } = planned.part;
  const pins = Number(/(\d+)[\s-]*pins?\b/iu.exec(planned.line.value)?.[1] ?? 0);
  const row = job.packageLooks.find(
    ({ kinds, pins_from, pins_to }) =>
      kinds.includes(kind) && pins >= pins_from && pins <= pins_to && pins % 2 === 0,
  );
  if (row === undefined || !isForm(row.form)) return [];
  const spec: PartSpec = {
    form: row.form,
    length: (pins / 2) * row.step_mm,
    width: row.width_mm,
    height: row.height_mm,
    pitch: row.pitch_mm,
    pins,
    notch: notchOf(fitted.found['notch']),
  };
  const said = `usual outline, seen from above with its notch ${notchWords(fitted.found['notch'])} (${basisWords[row.basis]?.meaning ?? row.basis})`;
  return [{ spec, name: `${String(pins)} pins`, said }];
};

/**
 * What a step is about, drawn to scale over a millimetre rule: the old part and the new one beside
 * it, with their marks of polarity or pin 1. Nothing where nothing says how they look.
 * @param catalogue of the position, with its sizes
 * @param looks looks of types, colours, outlines of chips
 */
export const sketchOf = (
  step: SheetStep,
  catalogue: Catalogue | undefined,
  looks: Catalogue,
): Element | undefined => {
  const parts = [
    ...capacitors(step, catalogue, looks),
    ...packages(step, looks),
    ...outlines(step, catalogue, looks),
  ];
  if (parts.length === 0) return undefined;
  const views = 'first';
  const pageScale = scaleFor(parts, { views });
  return h(
    'figure',
    { class: 'bench-sketch' },
    partsDrawing(parts, { views, pageScale, colours: coloursOf(looks) }),
    h(
      'figcaption',
      { class: 'small quiet' },
      parts.map(({ name, spec, said }) =>
        h(
          'span',
          {},
          `${capital(name)}: `,
          h('span', { class: 'qty' }, sidesInShort(spec)),
          `, ${said}. `,
        ),
      ),
      'Measure yours; colour and print are only what is usual.',
    ),
  );
};
