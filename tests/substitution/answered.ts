import { loadCatalogue } from '../../src/catalogue/index.ts';
import { findKindStandIns, findStandIns } from '../../src/engine/index.ts';
import { readAddress } from '../../src/substitution/address.ts';
import { answerSentence } from '../../src/substitution/answer.ts';
import { kindAnswer } from '../../src/substitution/kind-answer.ts';
import { readKindAddress } from '../../src/substitution/kind-address.ts';
import { answeredFirst } from '../../src/substitution/strangeness.ts';

const catalogue = loadCatalogue();

/** Words with plain spaces, however they are kept together on a page. */
const plain = (words: string): string => words.replaceAll('\u00A0', ' ');

/** The sentence that answers on the page `TYPE/in/POSITION` with an address such as `c=10u&v=25`. */
export const answered = (type: string, position: string, address: string): string => {
  const query = new URLSearchParams(address);
  if (Object.hasOwn(catalogue.kindTypes, type)) {
    const { request } = readKindAddress(catalogue, type, position, query);
    const listed = answeredFirst(catalogue, request, findKindStandIns(catalogue, request));
    return plain(kindAnswer(catalogue, request, listed));
  }
  const { request } = readAddress(catalogue, type, position, query);
  const listed = answeredFirst(catalogue, request, findStandIns(catalogue, request));
  return plain(answerSentence(catalogue, request, listed, { asked: request }));
};
