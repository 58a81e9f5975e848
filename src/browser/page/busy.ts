const waiting = new Set<() => void>();
let busy = false;

/** Whether work is open on the page that a reload would disturb. */
export const isBusy = (): boolean => busy;

/** Says whether such work is open; while it is, no update is offered. */
export const setBusy = (now: boolean): void => {
  busy = now;
  if (busy) return;
  const due = [...waiting];
  waiting.clear();
  for (const act of due) act();
};

/** Does something as soon as no such work is open. */
export const whenDone = (act: () => void): void => {
  waiting.add(act);
};
