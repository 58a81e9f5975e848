import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { deviceAnswer, withArticle } from '../../../src/device-view/answer.ts';
import { deviceStandIns, isMetIn } from '../../../src/engine/index.ts';
import { named } from './named.ts';

const catalogue = loadCatalogue();
const { device, use } = named(catalogue);

const answer = (old: string, at: string) =>
  deviceAnswer(
    device(old),
    use(at),
    deviceStandIns(catalogue, { original: device(old), use: use(at) }),
  );

describe('the answer of a page about a device', () => {
  it.each([
    ['LM317', 'an LM317'],
    ['741', 'a 741'],
    ['OP07', 'an OP07'],
    ['1N4004', 'a 1N4004'],
  ])('%s is %s', (name, words) => {
    expect(withArticle(name)).toBe(words);
  });

  it('never says that a part stands in for itself', () => {
    expect(answer('7805', 'reg-rail')).toMatch(
      /^As regulator of a rail behind a transformer, a 7805 is/u,
    );
    for (const old of catalogue.devices.devices)
      for (const place of catalogue.devices.uses.filter((one) => isMetIn(old, one)))
        expect(answer(old.id, place.id).startsWith(`${old.name} may`)).toBe(false);
  });

  it.each([
    ['bc547', 'transistor-stage', 'A new BC547 fits as small-signal stage; check this first: '],
    ['7905', 'reg-tight', 'On conditions of its own 79M05 may stand in for it.'],
    [
      'lm317',
      'reg-large-capacitor',
      'On conditions of their own LM317M or LM350 may stand in for it.',
    ],
    ['lm317', 'reg-adjusted', 'A new LM317 fits as regulator of an adjustable supply; LM350 may'],
  ])('names the number itself first where nothing does better: %s in %s', (old, at, words) => {
    expect(answer(old, at)).toContain(words);
    expect(answer(old, at)).toMatch(/^(?:A new|Another) /u);
  });

  it('warns of the part that fits the holes rather than of another voltage', () => {
    expect(answer('7805', 'reg-tight')).toContain('Keep LM1117-5 out');
  });
});
