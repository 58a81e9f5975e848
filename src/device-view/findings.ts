import { link } from '../components/link.ts';
import { verdictWords } from '../components/verdict-shape.ts';
import { basisName } from '../engine/basis-name.ts';
import {
  filledDeviceSum,
  type Catalogue,
  type DeviceAssessment,
  type DeviceCircumstances,
  type Finding,
  type Habit,
  type SourceId,
} from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import type { DeviceRow } from '../schemas/devices.ts';
import { findingBar } from '../substitution/finding-bar.ts';
import { figureText, spreadWords, tableOfFindings } from '../substitution/finding-table.ts';
import { printLimit, printMargin } from '../substitution/phrases.ts';
import { sourceMarks } from '../substitution/shown.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { inHabit } from '../text/in-habit.ts';

/** What the pieces of a page about a device in a use are drawn from. */
export interface DeviceShown {
  catalogue: Catalogue;
  circumstances: DeviceCircumstances;
  assessments: readonly DeviceAssessment[];
  /** Sources that the page lists, in that order. */
  cited: readonly SourceId[];
  habit?: Habit | undefined;
}

const weakestWords = ({ basis, weakest }: Finding, { catalogue }: DeviceShown): string => {
  const names = catalogue.devices.properties
    .filter(({ id }) => weakest.includes(id))
    .map(({ name }) => midSentence(name));
  return basis === 'published' || names.length === 0 ? '' : ` (${names.join(', ')})`;
};

/** What a finding rests on, and from which sources. */
export const grounds = (finding: Finding, shown: DeviceShown): Markup[] => [
  finding.missing.length > 0 ? 'no figure' : basisName(finding.basis),
  weakestWords(finding, shown),
  spreadWords(finding, shown.habit),
  ...sourceMarks(finding.sources, shown.cited),
];

/** How a finding was reckoned and what it rests on. */
export const workingOf = (finding: Finding, shown: DeviceShown): Markup[] => [
  `${inHabit(finding.working, shown.habit)}; `,
  ...grounds(finding, shown),
];

/** What leads from a finding to the sum that works out the same, with its numbers filled in. */
const sumLink = (finding: Finding, device: DeviceRow, { circumstances }: DeviceShown): Markup[] => {
  const filled = filledDeviceSum(finding, device, circumstances);
  if (filled === undefined) return [];
  const numbers = new URLSearchParams(filled.inputs).toString();
  return ['; ', link(`/sums/${filled.sum}/?${numbers}`, 'try other numbers')];
};

const rowsOf = (
  finding: Finding,
  { device, verdict }: DeviceAssessment,
  shown: DeviceShown,
): Markup[] => [
  h(
    'tr',
    {},
    h('th', { scope: 'row' }, h('a', { href: `#ask-${finding.demand}` }, finding.name)),
    h('td', {}, figureText(finding.original, finding.unit, shown.habit)),
    h('td', {}, figureText(finding.standIn, finding.unit, shown.habit)),
    h('td', {}, printLimit(finding, shown.habit)),
    h('td', {}, printMargin(finding, shown.habit)),
    h('td', { 'data-verdict': finding.verdict }, verdictWords[finding.verdict]),
  ),
  h(
    'tr',
    {},
    h(
      'td',
      { colspan: 6 },
      // What is to keep out is told in numbers alone: pages with many devices are heavy.
      verdict !== 'keep-out' && findingBar(finding, shown.habit),
      ...workingOf(finding, shown),
      ...sumLink(finding, device, shown),
    ),
  ),
];

/** All findings of a device with the old one beside it, the working and the sources. */
export const deviceFindingTable = (assessment: DeviceAssessment, shown: DeviceShown): Markup =>
  tableOfFindings(
    assessment.device.name,
    assessment.findings.flatMap((one) => rowsOf(one, assessment, shown)),
  );
