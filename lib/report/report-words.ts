import { z } from 'zod';
import { wordPlaces } from './content/report-indicators.input';

/** The coordinator's words, by the part of the report they stand in; a part without words has none. */
export const reportWords = z.partialRecord(z.enum(wordPlaces), z.string());

export type ReportWords = z.infer<typeof reportWords>;
