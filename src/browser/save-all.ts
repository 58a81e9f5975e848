import './older-browsers.ts';
import { href } from '../components/links.ts';
import type { Lists } from '../offline/lists.ts';
import type { Progress } from '../offline/progress.ts';
import { byId } from './page/by-id.ts';

/** Saves the whole site when asked, with its size said first and progress while it goes. */

const button = byId('save-all', HTMLButtonElement);
const forgetButton = byId('forget-pages', HTMLButtonElement);
const status = byId('saving', HTMLElement);

const BYTES_IN_MB = 1e6;
const inMegabytes = (bytes: number): string => `${Math.ceil(bytes / BYTES_IN_MB)}\u00a0MB`;

/** Whether the visitor's link is metered, as far as the browser tells. */
const isMetered = (): boolean => {
  const { connection } = navigator as Navigator & {
    connection?: { saveData?: boolean; type?: string };
  };
  return connection?.saveData === true || connection?.type === 'cellular';
};

const show = (progress: Progress): void => {
  if ('forgotten' in progress) {
    status.textContent = `${progress.forgotten} pages and files were let go. What every page needs is kept.`;
    button.disabled = false;
  } else if ('fault' in progress) {
    status.textContent =
      'Not all could be saved: the network or the room on this device gave out. What was saved stays; ask again to go on.';
    button.disabled = false;
  } else if (progress.all) {
    status.textContent = `All ${progress.total} files are saved. The site works without a network.`;
  } else {
    status.textContent = `${progress.done} of ${progress.total} files`;
  }
};

const ask = async (what: 'keep all' | 'forget'): Promise<void> => {
  const { active } = await navigator.serviceWorker.ready;
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = ({ data }: MessageEvent<Progress>) => {
    show(data);
  };
  active?.postMessage({ ask: what }, [port2]);
};

const start = async (): Promise<void> => {
  if (!('serviceWorker' in navigator)) {
    status.textContent = 'This browser cannot save pages, or not from this address.';
    return;
  }
  const response = await fetch(href('/offline/lists.json'));
  if (!response.ok) throw new Error('no lists');
  const { files, bytes } = (await response.json()) as Lists;
  button.textContent = `Save the whole site (${inMegabytes(bytes)} on this device)`;
  status.textContent = `${files} files.`;
  button.disabled = false;
  forgetButton.hidden = false;
  forgetButton.addEventListener('click', () => void ask('forget'));
  button.addEventListener('click', () => {
    const question = `Your link may be metered. Fetch up to ${inMegabytes(bytes)} all the same?`;
    if (isMetered() && !confirm(question)) return;
    button.disabled = true;
    // Asked so that the browser does not clear it when room is short; it may say no.
    void navigator.storage.persist().catch(() => false);
    void ask('keep all');
  });
};

start().catch(() => {
  status.textContent = 'The list of files could not be fetched; saving needs the network.';
});
