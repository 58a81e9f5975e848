import { kindCircumstances, type KindPart } from '../../engine/index.ts';
import { toDom } from '../../markup/to-dom.ts';
import type { KindAsked } from '../../substitution/kind-address.ts';
import {
  carriesSetting,
  newTrimmerInputs,
  readNewTrimmer,
} from '../../substitution/new-trimmer.ts';
import { settingMarkup } from '../../substitution/setting-view.ts';
import type { Shown } from '../../substitution/shown.ts';
import { given } from '../address/address-bar.ts';
import { writeNote } from '../page/note.ts';
import { askedNow } from './number-fields.ts';

/** The part of a trimmer's page that carries its setting over; other pages have none. */

const carried = document.getElementById('carried');

/** Shows the old setting carried over, with what is wrong with what was measured. */
export const showSetting = (shown: Shown<KindPart>, { request }: KindAsked): void => {
  const circumstances = kindCircumstances(shown.catalogue, request);
  if (carried === null || !carriesSetting(circumstances)) return;
  const { measured, rejected } = readNewTrimmer(askedNow());
  for (const { key, note, fault } of newTrimmerInputs(rejected, measured)) {
    const input = document.getElementById(`field-${key}`);
    writeNote(key, note, fault, input);
    input?.closest('.field')?.setAttribute('data-from', given.has(key) ? 'given' : 'default');
  }
  carried.replaceChildren(
    ...settingMarkup(shown, circumstances, measured).map((piece) => toDom(piece)),
  );
};
