import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { expectedDaysOf } from './expected-days-columns';

const number = (value: { toNumber(): number } | null) => value?.toNumber() ?? null;

/** What a network may change of its defaults: methods, windows, materials and species, by English name. */
export async function listSettings({ db, actor }: ReadContext) {
  if (actor.role !== 'coordinator') return undefined;
  const live = { voidedAt: null };
  const methods = await db.method.findMany({ where: live, orderBy: { nameEn: 'asc' } });
  const materials = await db.material.findMany({
    where: live,
    orderBy: { nameEn: 'asc' },
    include: { drained: { where: live, include: { method: true } } },
  });
  const species = await db.species.findMany({ where: live, orderBy: { nameEn: 'asc' } });
  const windows = await db.assessmentWindow.findMany({ where: live, include: { species: true } });
  return {
    methods: methods.map((row) => ({
      id: row.id,
      revision: row.revision,
      kind: row.kind,
      en: row.nameEn,
      es: row.nameEs,
      minCelsius: number(row.minCelsius),
      maxCelsius: number(row.maxCelsius),
      minPh: number(row.minPh),
      minMinutes: row.minMinutes,
      maxMinutes: row.maxMinutes,
    })),
    materials: materials.map((row) => ({
      id: row.id,
      revision: row.revision,
      kind: row.kind,
      en: row.nameEn,
      es: row.nameEs,
      receivedMoisturePercent: number(row.receivedMoisturePercent),
      drained: row.drained.map((one) => ({
        methodEn: one.method.nameEn,
        methodEs: one.method.nameEs,
        percent: one.drainedMoisturePercent.toNumber(),
      })),
    })),
    species: species.map((row) => ({
      id: row.id,
      revision: row.revision,
      en: row.nameEn,
      es: row.nameEs,
      scientificName: row.scientificName,
    })),
    windows: windows
      .map((row) => ({
        id: row.id,
        revision: row.revision,
        speciesEn: row.species.nameEn,
        speciesEs: row.species.nameEs,
        container: row.containerKind,
        contaminationDays: row.contaminationDays,
        yieldDays: row.yieldDays,
        expected: expectedDaysOf(row),
      }))
      .sort((a, b) => a.speciesEn.localeCompare(b.speciesEn) || a.container.localeCompare(b.container)),
  };
}

export type SettingsView = NonNullable<Awaited<ReturnType<typeof listSettings>>>;
