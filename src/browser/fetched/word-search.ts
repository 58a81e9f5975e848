import { href } from '../../components/links.ts';
import {
  INDEX,
  SEARCHER,
  type Found,
  type Hit,
  type Question,
  type Reply,
} from '../../search/word-index.ts';
import { isHere } from '../address/address.ts';
import '../trusted.ts';

interface Waiting {
  resolve: (found: Found | undefined) => void;
  reject: (fault: Error) => void;
}

const waiting = new Map<number, Waiting>();
let worker: Worker | undefined;
let asked = 0;

/** Gives up the worker and what it was asked; the next question starts another. */
const giveUp = (why: string): void => {
  worker?.terminate();
  worker = undefined;
  for (const { reject } of waiting.values()) reject(new Error(why));
  waiting.clear();
};

const take = ({ id, found, fault }: Reply): void => {
  // A failure, such as no network, is not kept: the next text tries again.
  if (fault !== undefined) return giveUp(fault);
  waiting.get(id)?.resolve(found);
  waiting.delete(id);
};

const started = (): Worker => {
  const made = new Worker(href(`${INDEX}${SEARCHER}`), { type: 'module' });
  made.addEventListener('message', ({ data }: MessageEvent<Reply>) => take(data));
  made.addEventListener('error', () => giveUp('the search could not be started'));
  return made;
};

const elsewhere = (hits: readonly Hit[]): Hit[] => hits.filter(({ url }) => !isHere(url));

/**
 * Pages that hold the words of a text, best first; nothing where newer typing has overtaken it.
 * @param further whether to look also among the pages that are seldom looked for
 * @throws where an index cannot be fetched
 */
export const searchWords = async (text: string, further: boolean): Promise<Found | undefined> => {
  worker ??= started();
  const question: Question = { id: (asked += 1), text, further };
  worker.postMessage(question);
  const found = await new Promise<Found | undefined>((resolve, reject) => {
    waiting.set(question.id, { resolve, reject });
  });
  if (found === undefined) return undefined;
  return {
    hits: elsewhere(found.hits),
    ...(found.further === undefined ? {} : { further: elsewhere(found.further) }),
  };
};
