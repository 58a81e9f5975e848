import type { Catalogue } from '../../engine/catalogue.ts';
import { CITED, NOTED, nothing, pick, without } from './slice-pieces.ts';

/** The part of the catalogue that naming a part by its look needs. */
export const sliceLook = (catalogue: Catalogue): Catalogue => {
  const { look, markings } = catalogue;
  const empty = nothing(catalogue);
  const asked = new Set([...look.questions, ...look.ranges].map(({ unit }) => unit));
  return {
    ...empty,
    units: pick(catalogue.units, asked),
    cautions: catalogue.cautions
      .filter(({ severity, types }) => severity === 'danger' && types.length > 0)
      .map((row) => without(row, ['text', ...CITED])),
    markings: {
      ...empty.markings,
      colours: markings.colours.map((row) => without(row, CITED)),
    },
    look: {
      ...look,
      styles: look.styles.map((row) => without(row, CITED)),
      questions: look.questions.map((row) => without(row, ['text', 'hint', 'how'])),
      answers: look.answers.map((row) => without(row, ['meaning', 'drawn'])),
      features: look.features.map((row) => without(row, ['locator'])),
      ranges: look.ranges.map((row) => without(row, ['locator'])),
      disguises: look.disguises.map((row) => without(row, NOTED)),
      weights: look.weights.map((row) => without(row, ['meaning', ...NOTED])),
    },
  };
};
