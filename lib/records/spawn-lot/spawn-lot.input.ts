import { z } from 'zod';
import { spawnForms } from '@/lib/growing/vocabulary';
import { choiceField } from '../fields/choice-field';
import { optionalCodeField } from '../fields/code-field';
import { dateField, optionalDateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { massField, optionalMassField } from '../fields/mass-field';
import { revisionField } from '../fields/revision-field';
import { optionalTextField, textField } from '../fields/text-field';

const lotFields = {
  code: optionalCodeField,
  speciesId: idField,
  strain: optionalTextField(120),
  form: choiceField(spawnForms),
  maker: optionalTextField(160),
  makerCode: optionalTextField(80),
  madeOn: optionalDateField,
  receivedOn: optionalDateField,
  received: optionalMassField(),
  parentLotId: optionalIdField,
  cultureName: optionalTextField(120),
  note: optionalTextField(),
};

export const addSpawnLotInput = z.object({ id: optionalIdField, ...lotFields });

export const correctSpawnLotInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...lotFields,
});

export const receiveSpawnInput = z.object({
  id: optionalIdField,
  spawnLotId: idField,
  siteId: idField,
  receivedOn: dateField,
  mass: massField(),
  note: optionalTextField(),
});
