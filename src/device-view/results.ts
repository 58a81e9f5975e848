import { link } from '../components/link.ts';
import { verdictMark } from '../components/verdict-shape.ts';
import { type DeviceAssessment, type SourceId, decidingFinding } from '../engine/index.ts';
import { h, type Markup } from '../markup/node.ts';
import { isDocument } from '../text/cited-documents.ts';
import { countOf, sentence, typeset } from '../text/words.ts';
import { reasonOf } from './answer.ts';
import { deviceFindingTable, grounds, workingOf, type DeviceShown } from './findings.ts';

/** The documents behind the findings, in the order in which the page cites them. */
export const citedBy = (
  sources: DeviceShown['catalogue']['sources'],
  assessments: readonly DeviceAssessment[],
): SourceId[] => {
  const all = assessments.flatMap(({ findings }) => findings.flatMap((one) => one.sources));
  return [...new Set(all)].filter((source) => {
    const kind = sources[source]?.kind;
    return kind !== undefined && isDocument(kind);
  });
};

const reasonLines = (assessment: DeviceAssessment, shown: DeviceShown): Markup[] => {
  const deciding = decidingFinding(assessment);
  if (deciding === undefined) return [];
  const others = assessment.findings.filter(
    ({ verdict, demand }) => verdict !== 'fits' && demand !== deciding.demand,
  );
  const lead = assessment.verdict === 'fits' ? 'Least to spare: ' : 'Decides: ';
  return [
    h('p', {}, lead, reasonOf(deciding, shown.habit), '.'),
    h(
      'p',
      { class: 'working' },
      ...(deciding.unit === 'grade' ? grounds : workingOf)(deciding, shown),
    ),
    others.length > 0 &&
      h(
        'p',
        { class: 'quiet' },
        `Also: ${others.map((one) => reasonOf(one, shown.habit)).join('; ')}.`,
      ),
  ].filter((piece) => piece !== false);
};

/** What is shown of findings: all of them, of what is kept out those that speak against it. */
const findingsShown = (assessment: DeviceAssessment, shown: DeviceShown): [string, Markup] => {
  const { verdict, findings } = assessment;
  if (verdict !== 'keep-out') {
    const words = `All ${findings.length} findings with their working`;
    return [words, deviceFindingTable(assessment, shown)];
  }
  const against = findings.filter((one) => one.verdict !== 'fits');
  const words = `${countOf(against.length, 'finding')} of ${findings.length} against it, with working`;
  return [words, deviceFindingTable({ ...assessment, findings: against }, shown)];
};

const item = (assessment: DeviceAssessment, open: boolean, shown: DeviceShown): Markup => {
  const { device, verdict } = assessment;
  const [words, table] = findingsShown(assessment, shown);
  return h(
    'li',
    { id: device.id },
    h('h3', {}, verdictMark(verdict), ' ', link(`/devices/${device.id}/`, device.name)),
    h('p', {}, sentence(device.summary)),
    device.trap !== '' && h('p', { class: 'quiet' }, `Mind: ${sentence(device.trap)}`),
    ...reasonLines(assessment, shown),
    h('details', { open }, h('summary', {}, words), table),
  );
};

const sourceList = ({ cited, catalogue }: DeviceShown): Markup[] =>
  cited.length === 0
    ? []
    : [
        h('h2', { id: 'sources' }, 'Sources'),
        // Folded as on the pages of capacitors: between lines this close a finger would miss.
        h(
          'details',
          { id: 'source-list' },
          h('summary', {}, countOf(cited.length, 'document')),
          h(
            'ol',
            { class: 'small' },
            ...cited.map((id) =>
              h('li', {}, link(`/sources/${id}/`, typeset(catalogue.sources[id]?.title ?? id))),
            ),
          ),
        ),
      ];

/** The ranked stand-ins, then what to keep out, then the documents behind it. */
export const deviceResults = (
  shown: DeviceShown,
  isOpen: (id: string) => boolean = () => false,
): Markup[] => {
  const usable = shown.assessments.filter(({ verdict }) => verdict !== 'keep-out');
  const kept = shown.assessments.filter(({ verdict }) => verdict === 'keep-out');
  const items = (some: readonly DeviceAssessment[]): Markup[] =>
    some.map((one) => item(one, isOpen(one.device.id), shown));
  return [
    h('h2', { id: 'stand-ins' }, 'Stand-ins, best first'),
    usable.length === 0
      ? h('p', {}, 'No part made today fits here as it stands; see below what rules each out.')
      : h('ol', { class: 'stand-ins' }, ...items(usable)),
    ...(kept.length === 0
      ? []
      : [h('h2', { id: 'keep-out' }, 'Keep out'), h('ul', { class: 'stand-ins' }, ...items(kept))]),
    ...sourceList(shown),
  ];
};
