import { z } from 'zod';
import { materialKinds, methodKinds } from '@/lib/growing/vocabulary';
import { optionalCelsiusField } from '../fields/celsius-field';
import { choiceField, optionalChoiceField } from '../fields/choice-field';
import { countField, optionalCountField } from '../fields/count-field';
import { idField, optionalIdField } from '../fields/id-field';
import { optionalMoistureField } from '../fields/percent-field';
import { optionalPhField } from '../fields/ph-field';
import { revisionField } from '../fields/revision-field';
import { textField } from '../fields/text-field';

const changed = { id: idField, revision: revisionField, reason: textField(1000) };
const names = { nameEn: textField(80), nameEs: textField(80) };

export const changeMethodInput = z.object({
  ...changed,
  ...names,
  minCelsius: optionalCelsiusField(),
  maxCelsius: optionalCelsiusField(),
  minPh: optionalPhField,
  minMinutes: optionalCountField({ most: 60_000 }),
  maxMinutes: optionalCountField({ most: 60_000 }),
});

export const changeMaterialInput = z.object({
  ...changed,
  ...names,
  receivedMoisturePercent: optionalMoistureField(),
});

export const changeSpeciesInput = z.object({
  ...changed,
  ...names,
});

const expectedDay = optionalCountField({ most: 4000 });

export const changeWindowInput = z.object({
  ...changed,
  contaminationDays: countField({ most: 2000 }),
  yieldDays: countField({ most: 4000 }),
  firstLookDays: optionalCountField({ most: 2000 }),
  colonisedFromDays: expectedDay,
  colonisedToDays: expectedDay,
  pinsFromDays: expectedDay,
  pinsToDays: expectedDay,
  firstHarvestFromDays: expectedDay,
  firstHarvestToDays: expectedDay,
  betweenFlushesFromDays: expectedDay,
  betweenFlushesToDays: expectedDay,
});

export const suitabilityVerdicts = ['suits', 'possible', 'unsuited'] as const;

const verdict = {
  verdict: choiceField(suitabilityVerdicts),
  reasonEn: textField(300),
  reasonEs: textField(300),
};

/** Exactly two of species, material and method, which has no row yet. */
export const addSuitabilityInput = z.object({
  id: optionalIdField,
  speciesId: optionalIdField,
  materialKind: optionalChoiceField(materialKinds),
  methodKind: optionalChoiceField(methodKinds),
  ...verdict,
});

export const changeSuitabilityInput = z.object({ ...changed, ...verdict });
