import { z } from 'zod';
import { id, idList, text } from './cells.ts';

/** Where a figure was looked for in vain, so that nobody has to look there again. */
export const soughtRow = z.strictObject({
  property: id,
  types: idList.describe('types whose figure still wants a source, or a second one'),
  sought: text.describe('the documents that were looked through'),
  found: text.describe('what they say instead'),
});
export type SoughtRow = z.output<typeof soughtRow>;

/** The same for a part that goes by its type number. */
export const soughtDeviceRow = z.strictObject({
  property: id,
  devices: idList.describe('devices whose figure still wants a source'),
  sought: soughtRow.shape.sought,
  found: soughtRow.shape.found,
});
export type SoughtDeviceRow = z.output<typeof soughtDeviceRow>;
