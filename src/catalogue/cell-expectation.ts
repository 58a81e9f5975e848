import type { z } from 'zod';

const afterExpected = (message: string): string => {
  const at = message.indexOf('expected ');
  return at < 0 ? message : message.slice(at + 'expected '.length);
};

/** What a cell should have held, in words, from what its schema says of it. */
export const cellExpectation = (issue: z.core.$ZodIssue): string => {
  if (issue.code === 'invalid_union') {
    const choices = issue.errors.flatMap((errors) => errors.slice(0, 1).map(cellExpectation));
    return [...new Set(choices)].join(' or ');
  }
  if (issue.code === 'invalid_value') {
    return issue.values.map((value) => (value === '' ? 'nothing' : String(value))).join(' or ');
  }
  if (issue.code === 'invalid_format' && issue.format === 'url') return 'an http or https address';
  return afterExpected(issue.message);
};
