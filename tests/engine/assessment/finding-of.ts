import type { Assessment, Finding } from '../../../src/engine/index.ts';

/** A finding of an assessment by its id. @throws where there is none */
export const findingOf = ({ findings }: Pick<Assessment, 'findings'>, id: string): Finding => {
  const found = findings.find(({ finding }) => finding === id);
  if (found === undefined) throw new Error(`no finding ${id}`);
  return found;
};

/** The working of a finding with plain spaces between numbers and units. */
export const workingOf = (assessment: Assessment, id: string): string =>
  findingOf(assessment, id).working.replaceAll(/\s/gu, ' ');
