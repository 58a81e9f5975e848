import type { Page } from '@playwright/test';

/**
 * Texts of a page that stand on each other, as pairs of their beginnings; what sticks to an edge of
 * the window lies over the page on purpose and is left out.
 */
export const textsOnTexts = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    interface Box {
      left: number;
      top: number;
      right: number;
      bottom: number;
    }
    const cut = (one: Box, other: Box): Box => ({
      left: Math.max(one.left, other.left),
      top: Math.max(one.top, other.top),
      right: Math.min(one.right, other.right),
      bottom: Math.min(one.bottom, other.bottom),
    });
    const around = (element: Element | null): Element[] =>
      element === null ? [] : [element, ...around(element.parentElement)];
    const isDrawnOver = (element: Element): boolean =>
      ['sticky', 'fixed'].includes(getComputedStyle(element).position);
    const isPlainText = (element: Element): boolean =>
      element.closest('svg, math, script, style, .visually-hidden') === null &&
      element.checkVisibility({
        contentVisibilityAuto: true,
        opacityProperty: true,
        visibilityProperty: true,
      }) &&
      !around(element).some(isDrawnOver);
    const seenOf = (element: Element): Box | undefined => {
      const clips = around(element)
        .filter((one) => one !== document.body && one !== document.documentElement)
        .filter((one) => {
          const { overflowX, overflowY } = getComputedStyle(one);
          return overflowX !== 'visible' || overflowY !== 'visible';
        })
        .map((one): Box => one.getBoundingClientRect());
      return clips.length === 0 ? undefined : clips.reduce(cut);
    };
    const lines: { box: Box; words: string }[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const element = node.parentElement;
      const words = node.textContent?.trim() ?? '';
      if (element === null || words === '' || !isPlainText(element)) continue;
      const seen = seenOf(element);
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const rect of range.getClientRects()) {
        const box = seen === undefined ? rect : cut(rect, seen);
        if (box.right - box.left > 2 && box.bottom - box.top > 4)
          lines.push({ box, words: words.slice(0, 40) });
      }
    }
    lines.sort((a, b) => a.box.top - b.box.top);
    return lines.flatMap(({ box, words }, at) => {
      const found: string[] = [];
      for (const other of lines.slice(at + 1)) {
        if (other.box.top > box.bottom) break;
        const { left, top, right, bottom } = cut(box, other.box);
        // Letters reach a little beyond their line, and lines stand close.
        if (right - left > 1.5 && bottom - top > 5) found.push(`“${words}” on “${other.words}”`);
      }
      return found;
    });
  });
