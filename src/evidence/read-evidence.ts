import { dataFolder } from '../catalogue/data-folder.ts';
import { readFolder } from '../catalogue/index.ts';
import { evidenceOf, type Evidence } from './evidence.ts';

/** The evidence of this project's own tables. */
export const readEvidence = (): Evidence => evidenceOf(readFolder(dataFolder()).tables);
