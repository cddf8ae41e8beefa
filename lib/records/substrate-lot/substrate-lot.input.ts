import { z } from 'zod';
import { moistureSources } from '@/lib/growing/vocabulary';
import { choiceField } from '../fields/choice-field';
import { optionalCodeField } from '../fields/code-field';
import { dateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { optionalLengthField } from '../fields/length-field';
import { massField, optionalMassField } from '../fields/mass-field';
import { optionalMoistureField } from '../fields/percent-field';
import { revisionField } from '../fields/revision-field';
import { optionalTextField, textField } from '../fields/text-field';

const lotFields = {
  code: optionalCodeField,
  materialId: idField,
  sourceName: optionalTextField(160),
  receivedOn: dateField,
  received: optionalMassField(),
  moistureSource: choiceField(moistureSources),
  moisturePercent: optionalMoistureField(),
  cutLength: optionalLengthField(),
  note: optionalTextField(),
};

export const addSubstrateLotInput = z.object({ id: optionalIdField, ...lotFields });

export const correctSubstrateLotInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...lotFields,
});

export const receiveSubstrateInput = z.object({
  id: optionalIdField,
  substrateLotId: idField,
  siteId: idField,
  receivedOn: dateField,
  mass: massField(),
  note: optionalTextField(),
});
