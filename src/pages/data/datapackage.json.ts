import { dataPackage } from '../../text/data-package.ts';

/** The description of all tables, for programs. */
export const GET = (): Response => Response.json(dataPackage());
