import type { LocalText } from './local-text';
import type { SourceKey } from './sources';
import type { ContaminationSignKind, LossCauseKind } from './vocabulary';

/** What a sign often turns out to be; shown as "looks like", never as a diagnosis. */
export type LikelyGroup = { readonly name: LocalText; readonly genera: readonly string[] };

export type ContaminationSign = {
  readonly sign: ContaminationSignKind;
  readonly name: LocalText;
  readonly looksLike: readonly LikelyGroup[];
  /** Empty: common practice. */
  readonly sources: readonly SourceKey[];
};

function group(en: string, es: string, ...genera: readonly string[]): LikelyGroup {
  return { name: { en, es }, genera };
}

/** What one sees or smells, in the order a form offers it, and the groups it often is. */
export const contaminationSigns: readonly ContaminationSign[] = [
  {
    sign: 'green',
    name: { en: 'Green', es: 'Verde' },
    looksLike: [group('Green mould', 'Moho verde', 'Trichoderma')],
    sources: ['MUSHROOM_INSTITUTE', 'INFONET', 'AJIS24'],
  },
  {
    sign: 'blue_green',
    name: { en: 'Blue-green', es: 'Verde azulado' },
    looksLike: [group('Blue-green mould', 'Moho verde azulado', 'Penicillium')],
    sources: [],
  },
  {
    sign: 'black',
    name: { en: 'Black', es: 'Negro' },
    looksLike: [
      group('Black mould', 'Moho negro', 'Aspergillus'),
      group('Pin mould', 'Moho de cabezuela', 'Rhizopus', 'Mucor'),
    ],
    sources: ['AKHTER17'],
  },
  {
    sign: 'orange_pink',
    name: { en: 'Orange or pink', es: 'Naranja o rosado' },
    looksLike: [group('Orange bread mould', 'Moho naranja del pan', 'Neurospora')],
    sources: [],
  },
  {
    sign: 'grey_cobweb',
    name: { en: 'Grey cobweb', es: 'Telaraña gris' },
    looksLike: [
      group('Cobweb', 'Telaraña', 'Cladobotryum'),
      group('Pin mould', 'Moho de cabezuela', 'Rhizopus', 'Mucor'),
    ],
    sources: [],
  },
  {
    sign: 'yellow',
    name: { en: 'Yellow', es: 'Amarillo' },
    looksLike: [group('Yellow mould', 'Moho amarillo', 'Aspergillus')],
    sources: [],
  },
  {
    sign: 'wet_brown',
    name: { en: 'Wet brown patches or slime', es: 'Manchas pardas húmedas o baba' },
    looksLike: [
      group('Bacterial wet spot', 'Mancha húmeda bacteriana', 'Bacillus'),
      group('Bacterial blotch on caps', 'Mancha bacteriana del sombrero', 'Pseudomonas'),
    ],
    sources: ['PENN_STATE'],
  },
  {
    sign: 'ink_caps',
    name: { en: 'Ink caps', es: 'Setas de tinta' },
    looksLike: [group('Ink caps', 'Coprinos', 'Coprinus', 'Coprinopsis')],
    sources: ['AKHTER17', 'PENN_STATE'],
  },
  {
    sign: 'flies',
    name: { en: 'Flies or larvae', es: 'Moscas o larvas' },
    looksLike: [
      group('Fungus gnats', 'Moscas esciáridas', 'Lycoriella'),
      group('Phorid or gall midges', 'Fóridos o cecidómidos', 'Megaselia', 'Heteropeza'),
    ],
    sources: [],
  },
  {
    sign: 'mites',
    name: { en: 'Mites', es: 'Ácaros' },
    looksLike: [
      group('Mould mites', 'Ácaros del moho', 'Tyrophagus'),
      group(
        'Red pepper mites, often with green mould',
        'Ácaros rojos, a menudo con moho verde',
        'Pygmephorus',
      ),
    ],
    sources: ['MUSHROOM_INSTITUTE'],
  },
  {
    sign: 'sour_smell',
    name: { en: 'Sour, rotten or ammonia smell', es: 'Olor agrio, a podrido o a amoníaco' },
    looksLike: [
      group(
        'Sour rot, too wet or without air',
        'Pudrición agria, exceso de agua o falta de aire',
        'Bacillus',
      ),
    ],
    sources: [],
  },
  {
    sign: 'other',
    name: { en: 'Something else', es: 'Otra cosa' },
    looksLike: [],
    sources: [],
  },
];

/** Why units were lost other than by contamination, in the order a form offers it. */
export const lossCauses: readonly { readonly cause: LossCauseKind; readonly name: LocalText }[] = [
  { cause: 'dried_out', name: { en: 'Dried out', es: 'Se secó' } },
  { cause: 'overheated', name: { en: 'Overheated', es: 'Se recalentó' } },
  { cause: 'eaten', name: { en: 'Eaten by animals', es: 'Se lo comieron animales' } },
  { cause: 'damaged', name: { en: 'Torn or broken', es: 'Roto o dañado' } },
  { cause: 'other', name: { en: 'Another cause', es: 'Otra causa' } },
];
