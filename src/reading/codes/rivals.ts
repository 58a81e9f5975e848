import { formatValue, readMarking, type Catalogue, type Reading } from '../../engine/index.ts';
import { listed, typeset } from '../../text/words.ts';
import { readingHeadline } from '../headline.ts';
import { table, type CodePage } from './page.ts';
import { shortBody } from './say.ts';

const valueOf = ({ capacitance, resistance }: Reading): string | undefined => {
  if (capacitance !== undefined) return formatValue(capacitance.typ, 'F');
  return resistance === undefined ? undefined : formatValue(resistance.typ, 'ohm');
};

interface Rival {
  says: string;
  bodies: string[];
  settle: string[];
}

/** What a code is first taken for on each body, and what else it may be where nothing is known. */
const rivalsOf = (catalogue: Catalogue, code: string): Rival[] => {
  const rivals = new Map<string, Rival>();
  const add = (reading: Reading, body: string | undefined): void => {
    const says = valueOf(reading) ?? readingHeadline(reading);
    if (says === '') return;
    const rival = rivals.get(says) ?? { says, bodies: [], settle: [] };
    rivals.set(says, {
      says,
      bodies: body === undefined ? rival.bodies : [...rival.bodies, body],
      settle: [...new Set([...rival.settle, ...reading.settleBy])],
    });
  };
  for (const reading of readMarking(catalogue, code)) add(reading, undefined);
  for (const { id, kind } of catalogue.markings.bodies) {
    const [first] = readMarking(catalogue, code, { body: id, kind });
    if (first !== undefined && first.evidence.some(({ text }) => text === code))
      add(first, shortBody(id));
  }
  return [...rivals.values()];
};

/** The rival readings of a code as a part of its page; none where there is only one. */
export const rivalsSection = (catalogue: Catalogue, code: string): CodePage['sections'] => {
  const rivals = rivalsOf(catalogue, code);
  if (rivals.length < 2) return [];
  return [
    {
      id: 'rivals',
      title: 'What else it may be',
      content: [
        table(
          `Readings of ${code}`,
          ['Reading', 'Expected on', 'What tells'],
          rivals.map(({ says, bodies, settle }) => [
            says,
            listed(bodies, 'and'),
            typeset(settle.slice(0, 3).join('; ')),
          ]),
        ),
      ],
    },
  ];
};
