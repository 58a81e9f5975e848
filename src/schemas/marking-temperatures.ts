import { z } from 'zod';
import {
  id,
  idList,
  list,
  number,
  optionalNumber,
  optionalText,
  provenance,
  text,
  yesNo,
} from './cells.ts';
import { context, use } from './marking-context.ts';

/** What a system of temperature codes takes as read. */
export const temperatureSystemRow = z.strictObject({
  id,
  name: text,
  class: z.enum(['1', '2']).transform(Number),
  t_ref: number.describe('degC at which the value is stated'),
  t_min: number.describe('degC, where the code itself gives none'),
  t_max: number.describe('degC, where the code itself gives none'),
  origins: idList.describe(
    'where its single letters were used; none where it has no single letters',
  ),
  letter_where: optionalText.describe(
    'where such a letter stands, in words; nothing to leave it out of the page of the letter',
  ),
  bodies: idList.describe('bodies that its codes stand on which are put together by rule'),
  ...provenance,
});

/** One sign of a class 1 ceramic code that is put together by rule. */
export const class1SignRow = z.strictObject({
  system: id.describe('id in temperature-systems.csv'),
  place: z
    .enum(['figure', 'multiplier', 'spread', 'slope'])
    .describe('figure times multiplier, or slope by itself; spread: how far it may be off'),
  symbol: text,
  value: number.describe('ppm/K, or the factor of a multiplier'),
  types: idList,
  use,
  ...provenance,
});

/** A temperature coefficient that has a name of its own. */
export const class1CodeRow = z.strictObject({
  code: text,
  system: id.describe('id in temperature-systems.csv'),
  min_ppm: number.describe('lowest coefficient, ppm/K'),
  typ_ppm: optionalNumber.describe('nominal coefficient, ppm/K'),
  max_ppm: number.describe('highest coefficient, ppm/K'),
  spread_known: yesNo.describe('no: the mark gives the nominal coefficient alone'),
  types: idList,
  use,
  ...context,
  ...provenance,
});

/** One sign of a class 2 ceramic code that is put together by rule. */
export const class2SignRow = z.strictObject({
  system: id.describe('id in temperature-systems.csv'),
  place: z.enum(['low', 'high', 'span', 'change']),
  symbol: text,
  low: optionalNumber.describe('degC, or the largest fall in percent as a negative number'),
  high: optionalNumber.describe('degC, or the largest rise in percent'),
  types: idList,
  use,
  ...provenance,
});

/** Codes that are put together by rule and met on parts. */
export const metCodeRow = z.strictObject({
  system: id.describe('id in temperature-systems.csv'),
  ends: list.describe('signs that they end in'),
  begins: list.describe(
    'signs that they begin with; none: each figure with each multiplier whose slope a code of class1-codes.csv has',
  ),
  ...provenance,
});

/** A class 2 characteristic that has a name of its own. */
export const class2CodeRow = z.strictObject({
  code: text,
  system: id.describe('id in temperature-systems.csv'),
  t_min: number.describe('degC'),
  t_max: number.describe('degC'),
  low: number.describe('largest fall, percent, negative'),
  high: number.describe('largest rise, percent'),
  types: idList,
  alone: yesNo.describe('no: a single letter, read so only beside a value'),
  use,
  ...context,
  ...provenance,
});
