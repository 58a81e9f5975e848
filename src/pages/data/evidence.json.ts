import { readEvidence } from '../../evidence/read-evidence.ts';

/** What the data rest on, for programs. */
export const GET = (): Response => Response.json(readEvidence());
