// Written by scripts/generate-designator-letters.ts from data/job/designator-letters.csv.
/** Letters of designators that have two or three, with spaces between. */
export const DESIGNATOR_LETTERS =
  'BR CN CON CP CR CT CV DA DD DR DS FB FS GL HY IC JP LED LP LS OK PL POT RA RL RLA RLY RN RP RT RV SI SK SP SW TC TH TP TR VC VD VR VT XT XU ZD';
