// Written by scripts/generate-designator-letters.ts from data/job/designator-letters.csv.
/** Letters of designators that have two or three, with spaces between. */
export const DESIGNATOR_LETTERS =
  'AJ BAT BR BT CI CN CON CP CR CT CTN CV DA DD DR DS FB FS FU GL GR HL HP HY IC IFT JP LED LP LS NTC OK PL POT PTC RA REL RL RLA RLY RN RP RS RT RV SI SK SP SW TC TF TH TM TP TR TV VC VD VDR VR VT XL XP XS XT XU XV ZD';
