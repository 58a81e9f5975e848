import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/index.ts';
import { findStandIns, type Request } from '../../src/engine/index.ts';
import { exactly } from '../../src/engine/quantities/range.ts';
import { answerSentence } from '../../src/substitution/answer.ts';

const catalogue = loadCatalogue();

const answerTo = (request: Request, of = catalogue): string =>
  answerSentence(of, request, findStandIns(of, request));

/** The catalogue with nothing on the market but some types, whatever else comes to be made. */
const selling = (...types: string[]): typeof catalogue => ({
  ...catalogue,
  offers: catalogue.offers.filter(({ type }) => types.includes(type)),
});

describe('where nothing that is made fits', () => {
  // 250 V through 10 megohm: the insulation promised of small parts lets more than 20 mV stand there.
  test('the nearest part is named with what it falls short of', () => {
    const answer = answerTo(
      {
        original: {
          type: 'ceramic-c0g',
          capacitance: exactly(1e-9),
          ratedVoltage: exactly(500),
        },
        position: 'input-coupling-high-impedance',
        conditions: { vdc: exactly(250), load: exactly(10e6), 'error-budget': exactly(0.02) },
      },
      selling('ceramic-c0g', 'silvered-mica', 'pp-film-foil'),
    );
    expect(answer.replaceAll('\u00a0', ' ')).toBe(
      'No part made today fits here as it stands. Nearest is silver mica, such as 1 nF ±5 % 500 V: ' +
        'offset by leakage 3.96–39.6 mV (usually 13.2 mV; at most 20 mV allowed).',
    );
  });

  // No approved part is made with so much capacitance.
  test('one without an approval is not called near', () => {
    const answer = answerTo({
      original: { type: 'film-x2', capacitance: exactly(1e-4), ratedVoltage: exactly(275) },
      position: 'mains-x',
    });
    expect(answer).toMatch(/^No part made today fits here as it stands\./u);
    expect(answer).toContain('the place asks for approval as X1 or X2, and this type has none');
    expect(answer).not.toContain('Nearest');
  });
});
