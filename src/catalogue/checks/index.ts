import type { Fault } from '../fault.ts';
import type { Tables } from '../read-folder.ts';
import { absorptionTest } from './absorption-test.ts';
import { basisRules } from './basis-rules.ts';
import { bodyShapes } from './body-shapes.ts';
import { capacitanceBounds } from './capacitance-bounds.ts';
import { changes } from './changes.ts';
import { canRun, type Check } from './check.ts';
import { circuits } from './circuits.ts';
import { colourCodes } from './colour-codes.ts';
import { colourMeanings } from './colour-meanings.ts';
import { conditionBounds } from './condition-bounds.ts';
import { conditionNumber } from './condition-number.ts';
import { conditionsComplete } from './conditions-complete.ts';
import { conditionsUsed } from './conditions-used.ts';
import { demandsComplete } from './demands-complete.ts';
import { deratingSpans } from './derating-spans.ts';
import { deviceDemands } from './device-demands.ts';
import { deviceFigures } from './device-figures.ts';
import { devicePins } from './device-pins.ts';
import { deviceSums } from './device-sums.ts';
import { devicesKnown } from './devices-known.ts';
import { disagreement } from './disagreement.ts';
import { doubleSpaces } from './double-spaces.ts';
import { drawings } from './drawings.ts';
import { eSeries } from './e-series.ts';
import { figureBounds } from './figure-bounds.ts';
import { figureStatus } from './figure-status.ts';
import { figuresComplete } from './figures-complete.ts';
import { findingsKnown } from './findings-known.ts';
import { ladders } from './ladders.ts';
import { kindFiguresComplete, kindIds, kindOffersComplete, kindPairs } from './kinds.ts';
import { limitUnit } from './limit-unit.ts';
import { lookAnswers } from './look-answers.ts';
import { lookComplete } from './look-complete.ts';
import { lookOwners } from './look-owners.ts';
import { lookQuestions } from './look-questions.ts';
import { lookUnits } from './look-units.ts';
import { makerNames } from './maker-names.ts';
import { marketBounds } from './market-bounds.ts';
import { marketComplete } from './market-complete.ts';
import { marketSeries } from './market-series.ts';
import { marketVoltages } from './market-voltages.ts';
import { colourWeightsComplete, guidelinesComplete, rulesComplete } from './named-rows.ts';
import { noteFigures } from './note-figures.ts';
import { notesComplete } from './notes-complete.ts';
import { numberOrder } from './number-order.ts';
import { plausible } from './plausible.ts';
import { preferredValues } from './preferred-values.ts';
import { references } from './references.ts';
import { repeatedItems } from './repeated-items.ts';
import { repeatedSources } from './repeated-sources.ts';
import { remembered } from './remembered.ts';
import { rippleAt } from './ripple-at.ts';
import { sizeOffers } from './size-offers.ts';
import { sourcesCited } from './sources-cited.ts';
import { sumsKnown } from './sums-known.ts';
import { triageComplete, triageOfLikes } from './triage-complete.ts';
import { unions } from './unions.ts';
import { uniqueKeys } from './unique-keys.ts';
import { unitKind } from './unit-kind.ts';
import { valueWindow } from './value-window.ts';

/** Every rule that tables keep among themselves. */
export const checks: readonly Check[] = [
  references,
  drawings,
  uniqueKeys,
  repeatedItems,
  numberOrder,
  plausible,
  ladders,
  unitKind,
  limitUnit,
  figureBounds,
  conditionBounds,
  marketBounds,
  capacitanceBounds,
  figuresComplete,
  figureStatus,
  kindIds,
  kindFiguresComplete,
  kindOffersComplete,
  kindPairs,
  absorptionTest,
  marketComplete,
  conditionNumber,
  demandsComplete,
  conditionsComplete,
  conditionsUsed,
  findingsKnown,
  sumsKnown,
  triageComplete,
  triageOfLikes,
  noteFigures,
  notesComplete,
  eSeries,
  preferredValues,
  marketSeries,
  marketVoltages,
  bodyShapes,
  sizeOffers,
  rippleAt,
  rulesComplete,
  colourWeightsComplete,
  guidelinesComplete,
  basisRules,
  disagreement,
  deratingSpans,
  sourcesCited,
  repeatedSources,
  changes,
  unions,
  valueWindow,
  circuits,
  colourCodes,
  colourMeanings,
  lookOwners,
  lookAnswers,
  lookQuestions,
  lookUnits,
  lookComplete,
  devicesKnown,
  deviceFigures,
  devicePins,
  deviceDemands,
  deviceSums,
  doubleSpaces,
  makerNames,
];

/** What each rule finds, remembered where it looks at few tables. */
const rules = checks.map((rule) => ({ ...rule, check: remembered(rule.check) }));

const lineOf = ({ file, line }: Fault): string => `${file}:${String(line)}`;

/** Runs every rule whose tables could be read, and returns every fault that they find. */
export const checkTables = (tables: Tables): Fault[] => {
  const run = (guesses: boolean): Fault[] =>
    rules
      .filter(({ guess = false }) => guess === guesses)
      .filter((rule) => canRun(rule, tables))
      .flatMap(({ check }) => check(tables));
  const firm = run(false);
  const lines = new Set(firm.map(lineOf));
  return [...firm, ...run(true).filter((fault) => !lines.has(lineOf(fault)))];
};
