import { expect, test } from 'vitest';
import { wordsOfAddress } from '../../src/search/words-of-address.ts';

test.each([
  ['/resistors/carbon-composition/', 'carbon composition'],
  ['/replace/ceramic-disc-unknown/in/audio', 'ceramic disc unknown in audio'],
  ['/read/codes/103K.html', 'codes 103K'],
  ['/capacitors/', 'capacitors'],
  ['/types/Glimmer_Kondensator/index.html', 'Glimmer Kondensator'],
  ['/devices/LM317/in/<script>/', 'LM317 in script'],
  ['/', ''],
  ['', ''],
])('%s asks for %j', (path, words) => {
  expect(wordsOfAddress(path)).toBe(words);
});

test('a long address is cut', () => {
  expect(wordsOfAddress(`/read/${'ab-'.repeat(200)}`)).toHaveLength(80);
});
