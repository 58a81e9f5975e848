import { paperHead } from '../../job-view/paper-head.ts';
import { toDom } from '../../markup/to-dom.ts';
import { byId } from '../page/by-id.ts';
import { current } from './state.ts';

/** Puts on paper which job it is of, and lets the parts of the page be printed. */
export const startPrinting = (): void => {
  const head = byId('paper-head', HTMLElement);
  addEventListener('beforeprint', () => {
    head.replaceChildren(...paperHead(current()).map((one) => toDom(one)));
  });
  for (const button of document.querySelectorAll<HTMLButtonElement>('.print-part'))
    button.addEventListener('click', () => {
      print();
    });
};
