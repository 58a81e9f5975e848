import { loadCatalogue } from '../../src/catalogue/index.ts';
import { findKindStandIns, findStandIns } from '../../src/engine/index.ts';
import { readAddress } from '../../src/substitution/address.ts';
import { answerSentence } from '../../src/substitution/answer.ts';
import { readKindAddress } from '../../src/substitution/kind-address.ts';
import { answeredFirst } from '../../src/substitution/strangeness.ts';

const catalogue = loadCatalogue();

/** The sentence that answers on the page `TYPE/in/POSITION` with an address such as `c=10u&v=25`, with plain spaces. */
export const answered = (type: string, position: string, address: string): string => {
  const query = new URLSearchParams(address);
  const assessments = Object.hasOwn(catalogue.kindTypes, type)
    ? findKindStandIns(catalogue, readKindAddress(catalogue, type, position, query).request)
    : findStandIns(catalogue, readAddress(catalogue, type, position, query).request);
  const listed = answeredFirst(catalogue, type, assessments);
  return answerSentence(catalogue, type, listed).replaceAll('\u00A0', ' ');
};
