import { colourCodes } from '../../../src/catalogue/checks/colour-codes.ts';
import { colourMeanings } from '../../../src/catalogue/checks/colour-meanings.ts';
import { testRule } from './made-tables.ts';

const SCHEMES = 'markings/colour-schemes.csv';
const MEANINGS = 'markings/colour-meanings.csv';
const LAYOUTS = 'markings/colour-layouts.csv';

testRule('colour-code', colourCodes, [
  {
    what: 'as many places as the body has, each with colours, and what is absent',
    tables: {
      [LAYOUTS]: ['id,labels,painted', 'two,first;second,bands-0;bands-1'],
      [SCHEMES]: [
        'id,layout,places,absent,codes',
        'a,two,digit;multiplier,tolerance,figures;powers;none-said',
        'b,unheard,digit,,figures',
      ],
      [MEANINGS]: [
        'code,role,colour',
        'figures,digit,red',
        'powers,multiplier,red',
        'none-said,tolerance,none',
      ],
    },
    faults: [],
  },
  {
    what: 'too few places, and too many',
    tables: {
      [LAYOUTS]: ['id,labels,painted', 'two,first;second,bands-0;bands-1'],
      [SCHEMES]: [
        'id,layout,places,codes',
        'a,two,digit,figures',
        'b,two,digit;digit;digit,figures',
      ],
      [MEANINGS]: ['code,role,colour', 'figures,digit,red'],
    },
    faults: [
      { at: `${SCHEMES}:2:places`, says: ['1 places', '2, as its layout'] },
      { at: `${SCHEMES}:3:places`, says: ['3 places', '2, as its layout'] },
    ],
  },
  {
    what: 'places and absent places of which its own codes say nothing',
    tables: {
      [SCHEMES]: [
        'id,layout,places,absent,codes',
        'a,two,digit;multiplier,tolerance;voltage,figures',
        'b,two,multiplier,,powers',
      ],
      [MEANINGS]: [
        'code,role,colour',
        'figures,digit,red',
        'figures,tolerance,gold',
        'powers,multiplier,red',
        'powers,multiplier,none',
      ],
    },
    faults: [
      { at: `${SCHEMES}:2:places`, says: ['no colour has a meaning as multiplier'] },
      { at: `${SCHEMES}:2:absent`, says: ['what no tolerance means', 'the colour none'] },
      { at: `${SCHEMES}:2:absent`, says: ['what no voltage means'] },
    ],
  },
  {
    what: 'codes that tell nothing of a place, or of an absent one only by a colour',
    tables: {
      [SCHEMES]: [
        'id,layout,places,absent,codes',
        'a,one,digit,tolerance,figures;golds;nones;others',
        'b,one,voltage,,others',
      ],
      [MEANINGS]: [
        'code,role,colour',
        'figures,digit,red',
        'golds,tolerance,gold',
        'nones,tolerance,none',
        'others,voltage,red',
      ],
    },
    faults: [
      { at: `${SCHEMES}:2:codes`, says: ['golds tells nothing'] },
      { at: `${SCHEMES}:2:codes`, says: ['others tells nothing'] },
    ],
  },
  {
    what: 'a drawing with a place too few or too many',
    tables: {
      [LAYOUTS]: [
        'id,labels,painted',
        'one,first,colour',
        'two,first;second,tip',
        'three,first,tip;otherTip',
      ],
    },
    faults: [
      { at: `${LAYOUTS}:3:painted`, says: ['1 places of a drawing', '2, as there are labels'] },
      { at: `${LAYOUTS}:4:painted`, says: ['2 places of a drawing', '1, as there are labels'] },
    ],
  },
  {
    what: 'meanings of a code that no scheme uses',
    tables: {
      [SCHEMES]: ['codes,places', 'figures,digit'],
      [MEANINGS]: ['role,code', 'digit,figures', 'digit,idle'],
    },
    faults: [{ at: `${MEANINGS}:3:code`, says: ['no scheme uses'] }],
  },
]);

const ROW = 'role,value,low,high,unit,word';

testRule('colour-meaning', colourMeanings, [
  {
    what: 'each role with what it needs',
    tables: {
      [MEANINGS]: [
        ROW,
        'digit,0,,,,',
        'digit,9,,,,',
        'hundreds-of-volts,4,,,,',
        'multiplier,0.01,,,,',
        'tolerance,,-5,5,percent,',
        'tolerance,,-0.1,0.1,pF,',
        'voltage,400,,,V,',
        'temperature,-30,,,ppm/K,',
        'temperature,,-30,30,ppm/K,',
        'class,,,,,one',
        'characteristic,,,,,B',
        'identifier,,,,,mica',
        'type,,,,,button',
        'link,,,,,zero ohm',
        'failure-rate,0.1,,,percent/1000h,',
        'temperature-range,,-55,85,degC,',
        'vibration,,10,55,Hz,',
      ],
    },
    faults: [],
  },
  {
    what: 'figures that are none',
    tables: { [MEANINGS]: [ROW, 'digit,10,,,,', 'digit,-1,,,,', 'digit,1.5,,,,', 'digit,,,,,'] },
    faults: [
      { at: `${MEANINGS}:2:value`, says: ['not as digit is', 'a figure from 0 to 9'] },
      `${MEANINGS}:3:value`,
      `${MEANINGS}:4:value`,
      `${MEANINGS}:5:value`,
    ],
  },
  {
    what: 'numbers that are not above zero, and units of another role',
    tables: {
      [MEANINGS]: [
        ROW,
        'multiplier,0,,,,',
        'multiplier,,,,,',
        'multiplier,10,,,V,',
        'voltage,-1,,,V,',
        'voltage,400,,,,',
        'failure-rate,1,,,percent,',
        'hundreds-of-volts,4.5,,,,',
      ],
    },
    faults: [
      { at: `${MEANINGS}:2:value`, says: ['as multiplier is', 'above zero'] },
      `${MEANINGS}:3:value`,
      { at: `${MEANINGS}:4:unit`, says: ['none'] },
      `${MEANINGS}:5:value`,
      { at: `${MEANINGS}:6:unit`, says: ['as voltage is', 'V'] },
      { at: `${MEANINGS}:7:unit`, says: ['percent/1000h'] },
      { at: `${MEANINGS}:8:value`, says: ['a figure'] },
    ],
  },
  {
    what: 'spans without an end, and in a unit of another role',
    tables: {
      [MEANINGS]: [
        ROW,
        'tolerance,,,5,percent,',
        'tolerance,,-5,,percent,',
        'tolerance,,-5,5,V,',
        'temperature,-30,,,,',
        'temperature,,-30,30,degC,',
        'temperature-range,20,,85,degC,',
        'temperature-range,,-55,85,,',
        'vibration,,10,55,,',
      ],
    },
    faults: [
      { at: `${MEANINGS}:2:low`, says: ['the lower end'] },
      { at: `${MEANINGS}:3:high`, says: ['the upper end'] },
      { at: `${MEANINGS}:4:unit`, says: ['percent or pF'] },
      `${MEANINGS}:5:low`,
      { at: `${MEANINGS}:6:unit`, says: ['ppm/K'] },
      `${MEANINGS}:7:low`,
      { at: `${MEANINGS}:8:unit`, says: ['degC'] },
      { at: `${MEANINGS}:9:unit`, says: ['Hz'] },
    ],
  },
  {
    what: 'roles that are words, without one',
    tables: {
      [MEANINGS]: [
        ROW,
        'class,1,,,,',
        'characteristic,1,,,,',
        'identifier,1,,,,',
        'type,1,,,,',
        'link,1,,,,',
      ],
    },
    faults: [
      { at: `${MEANINGS}:2:word`, says: ['in words'] },
      `${MEANINGS}:3:word`,
      `${MEANINGS}:4:word`,
      `${MEANINGS}:5:word`,
      `${MEANINGS}:6:word`,
    ],
  },
]);
