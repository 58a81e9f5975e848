import {
  askedOfEach,
  borneByEach,
  formatValue,
  kindChain,
  type Catalogue,
  type Habit,
  type KindAssessment,
  type KindRequest,
} from '../engine/index.ts';
import { midSentence } from '../text/mid-sentence.ts';
import { answerSentence } from './answer.ts';
import { partPhrase } from './phrases.ts';

/** How a chain begins a sentence, and what each part of it bears. */
const IN_WORDS: Readonly<Record<number, readonly [string, string]>> = {
  2: ['Two', 'half'],
  3: ['Three', 'a third'],
  4: ['Four', 'a quarter'],
};

/** Plain parts in series that do what no single one does, as a sentence with a space before it. */
const chained = (
  catalogue: Catalogue,
  request: KindRequest,
  assessments: readonly KindAssessment[],
  habit?: Habit,
): string => {
  const chain = kindChain(catalogue, request, assessments);
  const [many, share] = IN_WORDS[chain?.count ?? 0] ?? [];
  if (chain === undefined || many === undefined || share === undefined) return '';
  const row = catalogue.kindTypes[chain.each.candidate.type];
  const name = midSentence(row?.short_name ?? '');
  const kind = catalogue.kinds[row?.kind ?? '']?.plural ?? '';
  const { candidate } = chain.each;
  const bears = borneByEach(catalogue, askedOfEach(catalogue, request, chain.count), candidate);
  const borne =
    bears === undefined
      ? ''
      : `, up to ${formatValue(bears.volts, 'V', habit)} and ${formatValue(bears.watts, 'W', habit)}`;
  const fit = assessments[0]?.verdict === 'fits' ? 'fit as well' : 'fit';
  return ` ${many} ${name} ${kind} of ${partPhrase(candidate, habit)} in series ${fit}: each bears about ${share} of the voltage and of the power${borne}.`;
};

/** The sentence that answers for a kind besides capacitors, and a chain of plain parts where no single one will do. */
export const kindAnswer = (
  catalogue: Catalogue,
  request: KindRequest,
  assessments: readonly KindAssessment[],
  habit?: Habit,
): string =>
  answerSentence(catalogue, request, assessments, { habit }) +
  chained(catalogue, request, assessments, habit);
