// Written by scripts/generate-designator-letters.ts from data/job/designator-letters.csv.
/** Letters of designators that have two or three, with spaces between. */
export const DESIGNATOR_LETTERS =
  'AJ AP BAT BR BT CI CN CON CP CR CT CTN CV DA DD DR DS DZ FB FS FT FU GL GR HL HP HY IC IFT JAF JP LED LP LS NTC OK PL POT PTC RA REL RL RLA RLY RN RP RT RV SCR SI SK SP SW TC TF TH TM TP TR TV VC VD VDR VR VT XL XP XS XT XU XV ZD';
