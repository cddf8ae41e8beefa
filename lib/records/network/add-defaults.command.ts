import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import { assessmentWindowDefaults } from '@/lib/growing/assessment-window-defaults';
import { materialDefaults } from '@/lib/growing/material-defaults';
import { methodDefaults } from '@/lib/growing/method-defaults';
import { speciesDefaults } from '@/lib/growing/species-defaults';
import { suitabilityDefaults } from '@/lib/growing/suitability-defaults';
import { defaultExpectedDays } from './default-expected-days';
import { methodWindowColumns } from './method-window-columns';

/** Gives a new network its own copy of the default species, materials, methods, windows and table of what suits what; once only. */
export async function addDefaults({ db, actor, origin }: WriteContext): Promise<Result<{ added: boolean }>> {
  if (actor.role !== 'coordinator') return notFound;
  if ((await db.species.count()) > 0) return ok({ added: false });
  const row = { networkId: actor.networkId, createdById: actor.personId, origin };
  const speciesIds = new Map(speciesDefaults.map((species) => [species.code, newId()]));
  const materialIds = new Map(materialDefaults.map((material) => [material.code, newId()]));
  const methodIds = new Map(methodDefaults.map((method) => [method.kind, newId()]));
  await db.species.createMany({
    data: speciesDefaults.map((species) => ({
      ...row,
      id: speciesIds.get(species.code) ?? newId(),
      code: species.code,
      nameEn: species.commonName.en,
      nameEs: species.commonName.es,
      scientificName: species.scientificName,
      taxonId: species.ncbiTaxonId,
    })),
  });
  await db.assessmentWindow.createMany({
    data: assessmentWindowDefaults.flatMap((window) => {
      const speciesId = speciesIds.get(window.speciesCode);
      if (!speciesId) return [];
      const { container, contaminationDays, yieldDays } = window;
      const days = { containerKind: container, contaminationDays, yieldDays };
      return [{ ...row, id: newId(), speciesId, ...days, ...defaultExpectedDays(window) }];
    }),
  });
  await db.material.createMany({
    data: materialDefaults.map((material) => ({
      ...row,
      id: materialIds.get(material.code) ?? newId(),
      code: material.code,
      nameEn: material.name.en,
      nameEs: material.name.es,
      kind: material.kind,
      receivedMoisturePercent: material.asReceivedMoistureWetPercent,
    })),
  });
  await db.method.createMany({
    data: methodDefaults.map((method) => ({
      ...row,
      id: methodIds.get(method.kind) ?? newId(),
      code: method.code,
      nameEn: method.name.en,
      nameEs: method.name.es,
      kind: method.kind,
      ...methodWindowColumns(method.window),
    })),
  });
  await db.materialMoisture.createMany({
    data: materialDefaults.flatMap((material) =>
      Object.entries(material.drainedMoistureWetPercent).flatMap(([kind, percent]) => {
        const materialId = materialIds.get(material.code);
        const methodId = [...methodIds].find(([methodKind]) => methodKind === kind)?.[1];
        return materialId && methodId
          ? [{ ...row, id: newId(), materialId, methodId, drainedMoisturePercent: percent }]
          : [];
      }),
    ),
  });
  await db.suitability.createMany({
    data: suitabilityDefaults.map(({ speciesCode, material, method, verdict, reason }) => ({
      ...row,
      id: newId(),
      speciesId: speciesCode === null ? null : (speciesIds.get(speciesCode) ?? null),
      materialKind: material,
      methodKind: method,
      verdict,
      reasonEn: reason.en,
      reasonEs: reason.es,
    })),
  });
  return ok({ added: true });
}
