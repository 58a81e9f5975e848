import { bodyShapes } from '../../../src/catalogue/checks/body-shapes.ts';
import { kindIds, kindOffersComplete, kindPairs } from '../../../src/catalogue/checks/kinds.ts';
import { marketBounds } from '../../../src/catalogue/checks/market-bounds.ts';
import { marketComplete } from '../../../src/catalogue/checks/market-complete.ts';
import { rippleAt } from '../../../src/catalogue/checks/ripple-at.ts';
import { sizeOffers } from '../../../src/catalogue/checks/size-offers.ts';
import { testRule } from './made-tables.ts';

const BODY = 'shape,length_mm,width_mm,height_mm,pitch_mm,lead_mm';

testRule('body-shape', bodyShapes, [
  {
    what: 'bodies as they are made',
    tables: {
      'bodies.csv': [
        BODY,
        'can,10,10,20,5,0.6',
        'can,10,10,20,,',
        'tube,20,8,8,,0.8',
        'disc,9,3,9,10,0.6',
        'box,18,7,12,15,0.8',
        'box,18,7,12,10;15,',
        'drop,6,4,9,2.5;5;7.5,',
        'chip,3.2,1.6,1,,',
        'box,300,300,300,,299.9',
      ],
    },
    faults: [],
  },
  {
    what: 'round ones that are not round, by the second of the sides that are alike',
    tables: {
      'bodies.csv': [BODY, 'can,10,9,20,5,', 'tube,20,8,7,,', 'disc,9,3,8,5,', 'drop,6,4,3,5,'],
    },
    faults: [
      { at: 'bodies.csv:2:width_mm', says: ['a can that', 'length_mm and width_mm alike'] },
      { at: 'bodies.csv:3:height_mm', says: ['a tube that', 'width_mm and height_mm alike'] },
      { at: 'bodies.csv:4:height_mm', says: ['a disc that', 'length_mm and height_mm alike'] },
    ],
  },
  {
    what: 'each side that is longer than any part',
    tables: { 'bodies.csv': [BODY, 'box,301,302,303,,', 'box,18,7,500,,'] },
    faults: [
      { at: 'bodies.csv:2:length_mm', says: ['at most 300 mm'] },
      'bodies.csv:2:width_mm',
      'bodies.csv:2:height_mm',
      'bodies.csv:3:height_mm',
    ],
  },
  {
    what: 'pitches that fall, stand twice or are none',
    tables: {
      'bodies.csv': [
        BODY,
        'drop,6,4,9,5;2.5,',
        'drop,6,4,9,5;5,',
        'drop,6,4,9,0,',
        'chip,3,2,1,0,',
      ],
    },
    faults: [
      { at: 'bodies.csv:2:pitch_mm', says: ['each above the last'] },
      'bodies.csv:3:pitch_mm',
      'bodies.csv:4:pitch_mm',
      { at: 'bodies.csv:5:pitch_mm', says: ['each above the last'] },
    ],
  },
  {
    what: 'a pitch of what has none, and leads further apart than the body is long',
    tables: {
      'bodies.csv': [
        BODY,
        'tube,20,8,8,25,',
        'chip,3.2,1.6,1,2,',
        'can,10,10,20,10,',
        'box,18,7,12,10;20,',
        'disc,9,3,9,9,',
        'drop,6,4,9,12,',
      ],
    },
    faults: [
      { at: 'bodies.csv:2:pitch_mm', says: ['a tube has no pitch', 'nothing'] },
      { at: 'bodies.csv:3:pitch_mm', says: ['a chip has no pitch'] },
      { at: 'bodies.csv:4:pitch_mm', says: ['further apart', 'less than 10'] },
      { at: 'bodies.csv:5:pitch_mm', says: ['less than 18'] },
    ],
  },
  {
    what: 'leads of a chip, and leads as thick as the body',
    tables: { 'bodies.csv': [BODY, 'chip,3.2,1.6,1,,0.5', 'box,18,7,12,15,7', 'box,18,7,12,15,8'] },
    faults: [
      { at: 'bodies.csv:2:lead_mm', says: ['a chip has no leads', 'nothing'] },
      { at: 'bodies.csv:3:lead_mm', says: ['thicker than the body', 'less than 7'] },
      'bodies.csv:4:lead_mm',
    ],
  },
]);

testRule('ripple-at', rippleAt, [
  {
    what: 'a current at a temperature, or neither; a current at none, and a temperature for none',
    tables: {
      'series-resistance.csv': ['type,ripple_a,ripple_c', 'a,1.5,105', 'b,,', 'c,2,', 'd,,85'],
    },
    faults: [
      { at: 'series-resistance.csv:4:ripple_c', says: ['at no temperature', 'degC'] },
      { at: 'series-resistance.csv:5:ripple_c', says: ['for no ripple current', 'nothing'] },
    ],
  },
]);

testRule('out-of-bounds', marketBounds, [
  {
    what: 'tolerances that are made, and voltages and pitches upwards',
    tables: {
      'market.csv': [
        'tolerances,voltages,pitch_mm',
        '0.1;20;100,63;100,5;7.5',
        '20/80;0/100;0.05/0.1;10.5/20.25,63,',
        ',,',
      ],
    },
    faults: [],
  },
  {
    what: 'closer than any, wider than any, and what is no tolerance',
    tables: {
      'market.csv': [
        'type,tolerances',
        'a,0.05',
        'b,5;101',
        'c,20/180',
        'd,0.05/0.05',
        'e,M',
        'f,5%',
        'g,-20/80',
        'h,20/80/80',
        'i,5.',
        'j,20/80.',
      ],
    },
    faults: [
      { at: 'market.csv:2:tolerances', says: ['0.1 to 100'] },
      { at: 'market.csv:3:tolerances', got: '101' },
      'market.csv:4:tolerances',
      'market.csv:5:tolerances',
      'market.csv:6:tolerances',
      'market.csv:7:tolerances',
      'market.csv:8:tolerances',
      'market.csv:9:tolerances',
      'market.csv:10:tolerances',
      'market.csv:11:tolerances',
    ],
  },
  {
    what: 'voltages and pitches that fall, stand twice or are none',
    tables: {
      'market.csv': [
        'voltages,pitch_mm',
        '100;63,5',
        '63;63,5',
        '0;63,5',
        '63,7.5;5',
        '63;100,-5;5',
      ],
    },
    faults: [
      { at: 'market.csv:2:voltages', says: ['voltages out of order'] },
      'market.csv:3:voltages',
      'market.csv:4:voltages',
      { at: 'market.csv:5:pitch_mm', says: ['pitch_mm out of order'] },
      'market.csv:6:pitch_mm',
    ],
  },
]);

testRule('market-complete', marketComplete, [
  {
    what: 'what is made has an offer, what is not has none',
    tables: {
      'types.csv': [
        'id,market',
        'a,common',
        'b,current',
        'c,niche',
        'd,old-stock',
        'e,none',
        'f,common',
        '!g,none',
      ],
      'market.csv': [
        'style,type',
        'can,a',
        'can,b',
        'can,d',
        'box,e',
        '!x,f',
        'box,g',
        'box,unheard',
      ],
    },
    faults: [
      { at: 'market.csv:4:type', says: ['calls old-stock'] },
      { at: 'market.csv:5:type', says: ['calls none'] },
      { at: 'types.csv:4:market', says: ['no offer of c', 'a row c in', 'none or old-stock'] },
    ],
  },
]);

testRule('missing-offer-of-kind', kindOffersComplete, [
  {
    what: 'the same of other kinds of part',
    tables: {
      'kinds/types.csv': [
        'id,market',
        'a,common',
        'b,niche',
        'c,old-stock',
        'd,none',
        'e,old-stock',
        'f,none',
      ],
      'kinds/offers.csv': ['type', 'a', 'e', '!f'],
    },
    faults: [
      { at: 'kinds/types.csv:3:market', says: ['nothing of it is offered'] },
      { at: 'kinds/types.csv:6:market', says: ['yet it is offered'] },
      'kinds/types.csv:7:market',
    ],
  },
]);

testRule('id-taken', kindIds, [
  {
    what: 'names that one of capacitors has in the table beside it, and in another one',
    tables: {
      'types.csv': ['id', 'mica', 'film'],
      'positions.csv': ['id', 'timing', 'carbon'],
      'properties.csv': ['id', 'noise'],
      'kinds/types.csv': ['kind,id', 'resistor,carbon', 'resistor,film', '!resistor,mica'],
      'kinds/positions.csv': ['kind,id', 'resistor,timing', 'resistor,film'],
      'kinds/properties.csv': ['name,id', 'Noise,noise', 'Mica,mica'],
    },
    faults: [
      { at: 'kinds/positions.csv:2:id', says: ['positions.csv has one'] },
      { at: 'kinds/properties.csv:2:id', says: ['properties.csv has one'] },
      { at: 'kinds/types.csv:3:id', says: ['types.csv has one'] },
      'kinds/types.csv:4:id',
    ],
  },
]);

testRule('kind-of-pair', kindPairs, [
  {
    what: 'a type and a position of one kind, of two, of capacitors, and of a kind that there is not',
    tables: {
      'kinds/kinds.csv': ['id', 'resistor', 'trimmer'],
      'kinds/types.csv': ['id,kind', 'carbon,resistor', 'cermet,trimmer', 'odd,unheard'],
      'kinds/positions.csv': [
        'id,kind',
        'anode-load,resistor',
        'zero-set,trimmer',
        'strange,unheard',
      ],
      'unlikely-pairs.csv': [
        'type,position',
        'carbon,anode-load',
        'mica,timing',
        'carbon,zero-set',
        'mica,zero-set',
        'carbon,timing',
        'odd,zero-set',
        'carbon,strange',
      ],
    },
    faults: [
      { at: 'unlikely-pairs.csv:4:position', says: ['another kind than carbon'] },
      { at: 'unlikely-pairs.csv:5:position', says: ['another kind than mica'] },
      'unlikely-pairs.csv:6:position',
    ],
  },
]);

const RATED = ['volts,kind,families', '63,dc,', '100,dc,film;mica', '250,ac,film'];
const TYPES = ['id,family', 'foil,film', 'silver,mica', 'oil,paper'];
const MARKET = ['type,style', 'foil,box', 'foil,disc', 'silver,dipped'];

testRule('size-of-offer', sizeOffers, [
  {
    what: 'styles that are offered, or types of which nothing is, and voltages that are rated',
    tables: {
      'voltages.csv': RATED,
      'types.csv': TYPES,
      'market.csv': MARKET,
      'bodies.csv': [
        'type,style,voltage,voltage_kind',
        'foil,box,100,dc',
        'foil,disc,250,ac',
        'silver,dipped,63,dc',
        'oil,tube,77,dc',
        'unheard,tube,77,dc',
      ],
      'pulse-ratings.csv': ['type,style,voltage,voltage_kind', 'foil,box,100,dc'],
    },
    faults: [],
  },
  {
    what: 'a style of another type, of none, and voltages of another family or kind',
    tables: {
      'voltages.csv': RATED,
      'types.csv': TYPES,
      'market.csv': MARKET,
      'bodies.csv': [
        'type,style,voltage,voltage_kind',
        'foil,dipped,100,dc',
        'silver,dipped,100,ac',
        'silver,dipped,250,ac',
        'foil,box,250,dc',
      ],
      'pulse-ratings.csv': ['type,style,voltage,voltage_kind', 'foil,can,99,dc'],
    },
    faults: [
      { at: 'bodies.csv:2:style', says: ['style of foil', 'box or disc'] },
      { at: 'bodies.csv:3:voltage', says: ['100 V ac', 'mica parts'] },
      'bodies.csv:4:voltage',
      { at: 'bodies.csv:5:voltage', says: ['250 V dc', 'film parts'] },
      'pulse-ratings.csv:2:style',
      'pulse-ratings.csv:2:voltage',
    ],
  },
]);
