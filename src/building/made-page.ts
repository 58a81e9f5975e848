import { loadCatalogue } from '../catalogue/index.ts';
import { deviceFigures } from '../device-view/figures.ts';
import { devicePage } from '../device-view/page.ts';
import { deviceStandIns, findKindStandIns, type Catalogue } from '../engine/index.ts';
import type { Markup } from '../markup/node.ts';
import { toHtml } from '../markup/to-html.ts';
import { kindFigures, pairFigures } from '../substitution/figures.ts';
import { kindPage } from '../substitution/kind-page.ts';
import { substitutionPage } from '../substitution/page.ts';
import { referenceStandIns } from '../substitution/reference.ts';
import { answeredFirst } from '../substitution/strangeness.ts';
import { figuresJson } from './figures-json.ts';

/** The pages that the engine works for longest, each with the figures that stand beside it. */

interface Drawn {
  page: { title: string; answer: string; main: readonly Markup[] };
  figures: object;
}

const rowOf = <Row extends { id: string }>(rows: readonly Row[], id: string): Row => {
  const row = rows.find((one) => one.id === id);
  if (row === undefined) throw new RangeError(`there is no ${id}`);
  return row;
};

const MAKERS = {
  pair: (catalogue: Catalogue, old: string, place: string): Drawn => {
    const assessments = referenceStandIns(old, place);
    return {
      page: substitutionPage(catalogue, old, place, assessments),
      figures: pairFigures(old, place, assessments),
    };
  },
  kind: (catalogue: Catalogue, old: string, place: string): Drawn => {
    const request = { original: { type: old }, position: place };
    const assessments = answeredFirst(catalogue, request, findKindStandIns(catalogue, request));
    return {
      page: kindPage(catalogue, old, place, assessments),
      figures: kindFigures(old, place, assessments),
    };
  },
  device: (catalogue: Catalogue, old: string, place: string): Drawn => {
    const device = rowOf(catalogue.devices.devices, old);
    const use = rowOf(catalogue.devices.uses, place);
    const assessments = deviceStandIns(catalogue, { original: device, use });
    return {
      page: devicePage(catalogue, device, use, assessments),
      figures: deviceFigures(old, place, assessments),
    };
  },
};

/** Which page is wanted: of what kind, of which old part or device, in which position or use. */
export interface Order {
  of: keyof typeof MAKERS;
  old: string;
  place: string;
}

/** A page as texts, so that it can be handed from one thread to another. */
export interface MadePage {
  title: string;
  answer: string;
  /** What stands in it, as HTML. */
  html: string;
  /** The figures beside it, as JSON. */
  figures: string;
}

/**
 * Makes a page for the usual numbers.
 * @throws RangeError if the catalogue has no such part or place
 */
export const makePage = ({ of, old, place }: Order): MadePage => {
  const { page, figures } = MAKERS[of](loadCatalogue(), old, place);
  const { title, answer, main } = page;
  return { title, answer, html: main.map(toHtml).join(''), figures: figuresJson(figures) };
};
