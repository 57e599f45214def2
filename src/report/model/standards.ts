import { message } from '../../words/index.ts';

/** A standard that the schema names. */
export interface Standard {
  /** As the sources name it, without clause. */
  readonly number: string;
  readonly edition: string;
  readonly title: string;
}

/**
 * The standards behind the rules and defaults. Editions and titles are from memory, except IEC 61558-1 and BS 7671,
 * whose editions the sources of the schema give: hold them against the copy that applies to the job.
 */
export const STANDARDS: readonly Standard[] = [
  { number: 'IEC 60034-1', edition: '2022', title: message('Rotating electrical machines: rating and performance') },
  {
    number: 'IEC 60050-131', edition: '2002', title: message('International Electrotechnical Vocabulary: circuit theory'),
  },
  { number: 'IEC 60038', edition: '2009', title: message('IEC standard voltages') },
  { number: 'IEC 60127-2', edition: '2014', title: message('Miniature fuses: cartridge fuse-links') },
  { number: 'IEC 60228', edition: '2004', title: message('Conductors of insulated cables') },
  { number: 'IEC 60269-1', edition: '2006', title: message('Low-voltage fuses: general requirements') },
  {
    number: 'IEC 60364-4-43', edition: '2008',
    title: message('Low-voltage electrical installations: protection against overcurrent'),
  },
  { number: 'IEC 60364-5-52', edition: '2009', title: message('Low-voltage electrical installations: wiring systems') },
  {
    number: 'IEC 60364-7-715', edition: '2011',
    title: message('Low-voltage electrical installations: extra-low-voltage lighting installations'),
  },
  {
    number: 'IEC 60898-1', edition: '2015',
    title: message('Circuit-breakers for household and similar installations: AC operation'),
  },
  {
    number: 'IEC 60947-4-1', edition: '2018',
    title: message('Low-voltage switchgear: electromechanical contactors and motor-starters'),
  },
  {
    number: 'IEC 60947-5-1', edition: '2016',
    title: message('Low-voltage switchgear: electromechanical control circuit devices'),
  },
  { number: 'IEC 60947', edition: message('series'), title: message('Low-voltage switchgear and controlgear') },
  {
    number: 'IEC 61439-1', edition: '2020',
    title: message('Low-voltage switchgear and controlgear assemblies: general rules'),
  },
  {
    number: 'IEC 61558-1', edition: '2005',
    title: message('Safety of transformers, reactors, power supply units: general requirements'),
  },
  {
    number: 'IEC TR 60890', edition: '2014',
    title: message('Temperature-rise verification of assemblies by calculation'),
  },
  {
    number: 'IEC 60445', edition: '2021',
    title: message('Identification of equipment terminals, conductor terminations and conductors'),
  },
  { number: 'IEC 61666', edition: '2010', title: message('Identification of terminals within a system') },
  {
    number: 'IEC 81346-1', edition: '2022',
    title: message('Structuring principles and reference designations: basic rules'),
  },
  { number: 'IEC 62386', edition: message('series'), title: message('Digital addressable lighting interface') },
  { number: 'ISO/IEC 14543-3-6', edition: '2007', title: message('Home electronic systems: medium of wired buses') },
  { number: 'EN 13757-2', edition: '2018', title: message('Communication systems for meters: wired bus') },
  { number: 'EN 60204-1', edition: '2018', title: message('Safety of machinery: electrical equipment of machines') },
  { number: 'EN 50090', edition: message('series'), title: message('Home and building electronic systems') },
  { number: 'CiA 301', edition: '2011', title: message('Application layer and communication profile on a CAN bus') },
  { number: 'TIA-485-A', edition: '1998', title: message('Generators and receivers for balanced multipoint systems') },
  {
    number: 'BS 5839-1', edition: '2025',
    title: message('Fire detection and fire alarm systems for buildings'),
  },
  { number: 'BS 7671', edition: '2018+A2:2022', title: message('Requirements for electrical installations') },
  { number: 'NEC', edition: '2023', title: message('National Electrical Code, NFPA 70') },
];
