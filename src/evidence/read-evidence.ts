import { readOwnFolder } from '../catalogue/index.ts';
import { evidenceOf, type Evidence } from './evidence.ts';

let found: Evidence | undefined;

/** The evidence of this project's own tables, looked for once a process: several pages tell of it. */
export const readEvidence = (): Evidence => (found ??= evidenceOf(readOwnFolder().tables));
