import { z } from 'zod';
import { idField } from '@/lib/records/fields/id-field';
import { revisionField } from '@/lib/records/fields/revision-field';
import { optionalTextField, textField } from '@/lib/records/fields/text-field';
import { type WordPlace, wordPlaces } from './content/report-indicators.input';

const places = Object.fromEntries(wordPlaces.map((place) => [place, optionalTextField(2000)])) as Record<
  WordPlace,
  ReturnType<typeof optionalTextField>
>;

export const writeWordsInput = z.object({
  id: idField,
  revision: revisionField,
  title: textField(160),
  words: z.object(places),
});
