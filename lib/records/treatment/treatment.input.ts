import { z } from 'zod';
import { readingPlaces } from '@/lib/growing/vocabulary';
import { optionalCelsiusField } from '../fields/celsius-field';
import { optionalChoiceField } from '../fields/choice-field';
import { optionalCodeField } from '../fields/code-field';
import { idField, optionalIdField } from '../fields/id-field';
import { optionalMassField } from '../fields/mass-field';
import { momentField, optionalMomentField } from '../fields/moment-field';
import { optionalPhField } from '../fields/ph-field';
import { revisionField } from '../fields/revision-field';
import { optionalTextField, textField } from '../fields/text-field';
import { optionalVolumeField } from '../fields/volume-field';

const runFields = {
  code: optionalCodeField,
  siteId: idField,
  methodId: idField,
  startedAt: momentField,
  endedAt: optionalMomentField,
  water: optionalVolumeField(),
  lime: optionalMassField({ zero: true }),
  /** Material as it was put in, before it took up water. */
  load: optionalMassField(),
  loadCelsiusAtSpawning: optionalCelsiusField(),
  note: optionalTextField(),
};

export const startTreatmentInput = z.object({ id: optionalIdField, ...runFields });

export const correctTreatmentInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...runFields,
});

export const addReadingInput = z.object({
  id: optionalIdField,
  treatmentRunId: idField,
  /** Left out: now. */
  readAt: optionalMomentField,
  place: optionalChoiceField(readingPlaces),
  celsius: optionalCelsiusField(),
  ph: optionalPhField,
});

export const endTreatmentInput = z.object({
  id: idField,
  revision: revisionField,
  endedAt: momentField,
  loadCelsiusAtSpawning: optionalCelsiusField(),
});

export const allocateTreatmentInput = z.object({
  id: optionalIdField,
  treatmentRunId: idField,
  siteId: idField,
  mass: optionalMassField(),
});
