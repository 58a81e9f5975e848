import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../src/catalogue/index.ts';
import { judgeFirst, type Advice, type Evidence } from '../../../src/engine/index.ts';

const catalogue = loadCatalogue();

interface Case {
  what: string;
  type: string;
  position: string;
  capacitance: number;
  evidence: Evidence;
  advice: Advice;
}

/** Readings that a new part may give as well, and the same with a fault. */
const cases: Case[] = [
  {
    what: 'a bead of 0.1 µF with 15 Ω, of which a new one may have 20 Ω by its sheet',
    type: 'ta-mno2-solid',
    position: 'one-shot-timing',
    capacitance: 1e-7,
    evidence: { esr: 15 },
    advice: 'test',
  },
  {
    what: 'a bead of 10 µF with 50 Ω',
    type: 'ta-mno2-solid',
    position: 'one-shot-timing',
    capacitance: 1e-5,
    evidence: { esr: 50 },
    advice: 'replace',
  },
  {
    what: 'polystyrene 4 % short of its mark, which may be of 5 %',
    type: 'ps-film-foil',
    position: 'active-filter',
    capacitance: 1e-9,
    evidence: { capacitance: 0.96e-9 },
    advice: 'test',
  },
  {
    what: 'polystyrene 15 % short of its mark',
    type: 'ps-film-foil',
    position: 'active-filter',
    capacitance: 1e-9,
    evidence: { capacitance: 0.85e-9 },
    advice: 'replace',
  },
  {
    what: 'a coupling film of 4.7 µF with 3000 MΩ, 14 000 s, as much as a new one is promised',
    type: 'pet-metallized',
    position: 'interstage-coupling',
    capacitance: 4.7e-6,
    evidence: { insulation: 3e9 },
    advice: 'test',
  },
  {
    what: 'a coupling film with 500 MΩ',
    type: 'pet-metallized',
    position: 'interstage-coupling',
    capacitance: 1e-7,
    evidence: { insulation: 5e8 },
    advice: 'replace',
  },
  {
    what: 'a hold film of 10 nF with 5000 MΩ',
    type: 'pp-film-foil',
    position: 'sample-hold',
    capacitance: 1e-8,
    evidence: { insulation: 5e9 },
    advice: 'replace',
  },
  {
    what: 'a multilayer part of 1 µF with 600 MΩ, where 500 s are promised',
    type: 'ceramic-x7r',
    position: 'local-decoupling',
    capacitance: 1e-6,
    evidence: { insulation: 6e8 },
    advice: 'test',
  },
  {
    what: 'a multilayer part with 50 MΩ',
    type: 'ceramic-x7r',
    position: 'local-decoupling',
    capacitance: 1e-7,
    evidence: { insulation: 5e7 },
    advice: 'replace',
  },
  {
    what: 'a disc with 500 MΩ',
    type: 'ceramic-z5u',
    position: 'local-decoupling',
    capacitance: 1e-8,
    evidence: { insulation: 5e8 },
    advice: 'replace',
  },
];

describe('a reading that a new part may give', () => {
  it.each(cases)('$what: $advice', ({ type, position, capacitance, evidence, advice }) => {
    const marked = { type, capacitance, ratedVoltage: 35 };
    expect(judgeFirst(catalogue, marked, position, evidence).advice).toBe(advice);
  });
});
