import type { Opened } from '../../job/index.ts';
import { addressOf, fragment, keepFragment } from '../address/address.ts';
import { byId } from '../page/by-id.ts';
import { current } from './state.ts';

/** Links that hold a whole job, for as long as it is short enough. */

const MARK = 'job=';

/** Packs and unpacks jobs; fetched apart, since few visits do either. */
const packing = () => import('../../job/keeping/share.ts');

/** Makes the button work that copies a link with the job in it, and says how long that is. */
export const startSharing = (): void => {
  const said = byId('job-said', HTMLElement);
  const copy = async (): Promise<void> => {
    const packer = await packing().catch(() => undefined);
    if (packer === undefined) {
      said.textContent = 'What packs a job into a link could not be fetched.';
      return;
    }
    const shared = await packer.shareJob(current());
    if (!shared.ok) {
      const save = document.createElement('button');
      save.type = 'button';
      save.textContent = 'Save as a file';
      save.addEventListener('click', () => {
        byId('save-job', HTMLButtonElement).click();
      });
      said.replaceChildren(`${shared.message} `, save);
      return;
    }
    const address = addressOf(`${MARK}${shared.fragment}`);
    try {
      await navigator.clipboard.writeText(address);
      said.textContent = `Copied a link of ${String(address.length)} characters that holds the whole job. Whoever has it can read all of it.`;
    } catch {
      said.textContent = 'The browser does not let this page copy.';
    }
  };
  byId('share-job', HTMLButtonElement).addEventListener('click', () => void copy());
  // So that it is there without a network.
  packing().catch(() => undefined);
};

/** The job that the address holds, taken out of it; nothing where it holds none. */
export const sharedInAddress = async (): Promise<Opened | undefined> => {
  if (!fragment().startsWith(MARK)) return undefined;
  const { openShared } = await packing();
  const read = await openShared(fragment().slice(MARK.length));
  keepFragment('parts');
  return read;
};
