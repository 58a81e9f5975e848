import type { Catalogue } from '../../engine/catalogue.ts';
import { drawnSchemes } from '../../engine/colours/bands-of.ts';
import {
  CITED,
  eachWithout,
  NOTED,
  nothing,
  pick,
  RULES_OF_LINES,
  TYPE_WORDS,
  without,
  withoutLeads,
} from './slice-pieces.ts';

/** The part of the catalogue that the papers of a job need beside the slices of its positions. */
export const sliceJob = (catalogue: Catalogue): Catalogue => ({
  ...nothing(catalogue),
  units: catalogue.units,
  types: eachWithout(catalogue.types, ['appearance', 'failure', ...NOTED]),
  kinds: catalogue.kinds,
  kindTypes: eachWithout(catalogue.kindTypes, TYPE_WORDS),
  devices: {
    ...nothing(catalogue).devices,
    devices: catalogue.devices.devices.map((row) => without(row, ['summary', 'trap', ...CITED])),
  },
  cautions: catalogue.cautions,
  mountings: withoutLeads(catalogue),
  rulesOfThumb: pick(catalogue.rulesOfThumb, RULES_OF_LINES),
  job: {
    ...nothing(catalogue).job,
    fittingOrder: catalogue.job.fittingOrder,
    closingChecks: catalogue.job.closingChecks,
    benchFields: catalogue.job.benchFields,
    leadForming: catalogue.job.leadForming,
    columnWords: catalogue.job.columnWords,
    designatorLetters: catalogue.job.designatorLetters
      .filter(({ kind }) => kind !== '')
      .map((row) => without(row, CITED)),
  },
});

/** The part of the catalogue that drawings need beside the sizes of a position's slice. */
export const sliceDrawings = (catalogue: Catalogue): Catalogue => {
  const empty = nothing(catalogue);
  const { colours, toleranceLetters, colourMeanings } = catalogue.markings;
  const banded = drawnSchemes(catalogue.markings);
  const codes = new Set(banded.flatMap((scheme) => scheme.codes));
  return {
    ...empty,
    typeLooks: catalogue.typeLooks.map((row) => without(row, NOTED)),
    job: {
      ...empty.job,
      packageLooks: catalogue.job.packageLooks.map((row) => without(row, NOTED)),
      partOutlines: catalogue.job.partOutlines.map((row) => without(row, NOTED)),
    },
    markings: {
      ...empty.markings,
      colours: colours.map((row) => without(row, CITED)),
      toleranceLetters: toleranceLetters.map((row) => without(row, CITED)),
      colourSchemes: banded.map((row) => without(row, ['about', ...CITED])),
      colourMeanings: colourMeanings
        .filter(({ code }) => codes.has(code))
        .map((row) => without(row, ['word', 'types', ...CITED])),
    },
  };
};
