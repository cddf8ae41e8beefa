-- What suits a species: its materials and treatments, and which material and treatment go together. Each network has
-- its own rows, which its coordinator changes; until now the table stood in the code and lime in the species.

create type public.suitability_verdict as enum ('suits', 'possible', 'unsuited');

create table public.suitability (
    "network_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT uuidv7(),
    "species_id" UUID,
    "material_kind" public.material_kind,
    "method_kind" public.method_kind,
    "verdict" public.suitability_verdict NOT NULL,
    "reason_en" TEXT NOT NULL,
    "reason_es" TEXT NOT NULL,
    "origin" public.record_origin NOT NULL DEFAULT 'form',
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "voided_at" TIMESTAMPTZ(3),
    "void_reason" TEXT,

    CONSTRAINT "suitability_pkey" PRIMARY KEY ("network_id","id")
);
alter table public.suitability add constraint "suitability_network_id_fkey" foreign key ("network_id") references public.network("id") on delete restrict on update no action;
alter table public.suitability add constraint "suitability_network_id_species_id_fkey" foreign key ("network_id", "species_id") references public.species("network_id", "id") on delete restrict on update no action;
alter table public.suitability
  add constraint suitability_names_two check (num_nonnulls(species_id, material_kind, method_kind) = 2),
  add constraint suitability_reasons check (length(trim(reason_en)) > 0 and length(trim(reason_es)) > 0),
  add constraint suitability_void_reason check (voided_at is null or length(trim(void_reason)) > 0);
create unique index suitability_once on public.suitability (network_id, species_id, material_kind, method_kind)
  nulls not distinct where voided_at is null;

grant select, insert, update on public.suitability to pinset_app, pinset_definer;
create trigger keep_identity before update on public.suitability for each row execute function app.keep_identity();
create trigger write_history after insert or update on public.suitability for each row execute function app.write_history();

-- Networks that exist get the table that their forms have asked by so far. The owner is held by the policies of the
-- tables it reads, so they are lifted for it within this transaction.
alter table public.species no force row level security;
alter table public.network no force row level security;
create temporary table default_suitability (species_code text, material text, method text, verdict text, reason_en text, reason_es text) on commit drop;
insert into default_suitability values
  ('pleurotus_ostreatus', 'straw', null, 'suits', 'Straw is the usual oyster substrate.', 'La paja es el sustrato habitual de las setas ostra.'),
  ('pleurotus_ostreatus', 'corn_residue', null, 'suits', 'Oysters grow on stalks, husks and crushed cobs.', 'Las setas ostra crecen en caña, hoja y olote triturado.'),
  ('pleurotus_ostreatus', 'coffee_grounds', null, 'suits', 'Use grounds within a day of brewing; they mould quickly.', 'Use el poso dentro del día de preparado; se enmohece rápido.'),
  ('pleurotus_ostreatus', 'husk', null, 'suits', 'Husks and hulls carry oysters well, best mixed with straw.', 'Las cascarillas sirven bien, mejor mezcladas con paja.'),
  ('pleurotus_ostreatus', 'sawdust', null, 'suits', 'Hardwood sawdust suits oysters.', 'El aserrín de madera dura va bien con las setas ostra.'),
  ('pleurotus_ostreatus', 'cardboard', null, 'possible', 'Clean cardboard works, with a small crop.', 'El cartón limpio funciona, con poca cosecha.'),
  ('pleurotus_ostreatus', 'wood_chips', null, 'possible', 'Chips are slow for oysters; mix with straw or sawdust.', 'La astilla es lenta para setas ostra; mezcle con paja o aserrín.'),
  ('pleurotus_ostreatus', 'log_wood', null, 'suits', 'Soft hardwoods such as poplar, willow and maple suit oysters.', 'Maderas como álamo, sauce y arce van bien con las setas ostra.'),
  ('pleurotus_ostreatus', 'spent_substrate', null, 'possible', 'Much of the food is used up: expect a smaller crop and more competitors.', 'Gran parte del alimento ya se consumió: espere menos cosecha y más competidores.'),
  ('pleurotus_ostreatus', null, 'hot_water_bath', 'suits', 'The usual treatment for oyster straw.', 'El tratamiento habitual de la paja para setas ostra.'),
  ('pleurotus_ostreatus', null, 'cold_lime_soak', 'suits', 'Oysters bear the high pH and competitors do not.', 'Las setas ostra soportan el pH alto y los competidores no.'),
  ('pleurotus_ostreatus', null, 'cold_ferment', 'suits', 'Oysters settle quickly in drained fermented straw.', 'Las setas ostra se establecen rápido en paja fermentada y escurrida.'),
  ('pleurotus_ostreatus', null, 'steam', 'suits', 'Steamed straw or sawdust suits oysters.', 'La paja o el aserrín al vapor va bien con las setas ostra.'),
  ('pleurotus_ostreatus', null, 'untreated', 'possible', 'Only with fresh clean material and much spawn; expect more contamination.', 'Solo con material fresco y limpio y mucha semilla; espere más contaminación.'),
  ('pleurotus_pulmonarius', 'straw', null, 'suits', 'Straw is the usual oyster substrate.', 'La paja es el sustrato habitual de las setas ostra.'),
  ('pleurotus_pulmonarius', 'corn_residue', null, 'suits', 'Oysters grow on stalks, husks and crushed cobs.', 'Las setas ostra crecen en caña, hoja y olote triturado.'),
  ('pleurotus_pulmonarius', 'coffee_grounds', null, 'suits', 'Use grounds within a day of brewing; they mould quickly.', 'Use el poso dentro del día de preparado; se enmohece rápido.'),
  ('pleurotus_pulmonarius', 'husk', null, 'suits', 'Husks and hulls carry oysters well, best mixed with straw.', 'Las cascarillas sirven bien, mejor mezcladas con paja.'),
  ('pleurotus_pulmonarius', 'sawdust', null, 'suits', 'Hardwood sawdust suits oysters.', 'El aserrín de madera dura va bien con las setas ostra.'),
  ('pleurotus_pulmonarius', 'cardboard', null, 'possible', 'Clean cardboard works, with a small crop.', 'El cartón limpio funciona, con poca cosecha.'),
  ('pleurotus_pulmonarius', 'wood_chips', null, 'possible', 'Chips are slow for oysters; mix with straw or sawdust.', 'La astilla es lenta para setas ostra; mezcle con paja o aserrín.'),
  ('pleurotus_pulmonarius', 'log_wood', null, 'suits', 'Soft hardwoods such as poplar, willow and maple suit oysters.', 'Maderas como álamo, sauce y arce van bien con las setas ostra.'),
  ('pleurotus_pulmonarius', 'spent_substrate', null, 'possible', 'Much of the food is used up: expect a smaller crop and more competitors.', 'Gran parte del alimento ya se consumió: espere menos cosecha y más competidores.'),
  ('pleurotus_pulmonarius', null, 'hot_water_bath', 'suits', 'The usual treatment for oyster straw.', 'El tratamiento habitual de la paja para setas ostra.'),
  ('pleurotus_pulmonarius', null, 'cold_lime_soak', 'suits', 'Oysters bear the high pH and competitors do not.', 'Las setas ostra soportan el pH alto y los competidores no.'),
  ('pleurotus_pulmonarius', null, 'cold_ferment', 'suits', 'Oysters settle quickly in drained fermented straw.', 'Las setas ostra se establecen rápido en paja fermentada y escurrida.'),
  ('pleurotus_pulmonarius', null, 'steam', 'suits', 'Steamed straw or sawdust suits oysters.', 'La paja o el aserrín al vapor va bien con las setas ostra.'),
  ('pleurotus_pulmonarius', null, 'untreated', 'possible', 'Only with fresh clean material and much spawn; expect more contamination.', 'Solo con material fresco y limpio y mucha semilla; espere más contaminación.'),
  ('pleurotus_citrinopileatus', 'straw', null, 'suits', 'Straw is the usual oyster substrate.', 'La paja es el sustrato habitual de las setas ostra.'),
  ('pleurotus_citrinopileatus', 'corn_residue', null, 'suits', 'Oysters grow on stalks, husks and crushed cobs.', 'Las setas ostra crecen en caña, hoja y olote triturado.'),
  ('pleurotus_citrinopileatus', 'coffee_grounds', null, 'suits', 'Use grounds within a day of brewing; they mould quickly.', 'Use el poso dentro del día de preparado; se enmohece rápido.'),
  ('pleurotus_citrinopileatus', 'husk', null, 'suits', 'Husks and hulls carry oysters well, best mixed with straw.', 'Las cascarillas sirven bien, mejor mezcladas con paja.'),
  ('pleurotus_citrinopileatus', 'sawdust', null, 'suits', 'Hardwood sawdust suits oysters.', 'El aserrín de madera dura va bien con las setas ostra.'),
  ('pleurotus_citrinopileatus', 'cardboard', null, 'possible', 'Clean cardboard works, with a small crop.', 'El cartón limpio funciona, con poca cosecha.'),
  ('pleurotus_citrinopileatus', 'wood_chips', null, 'possible', 'Chips are slow for oysters; mix with straw or sawdust.', 'La astilla es lenta para setas ostra; mezcle con paja o aserrín.'),
  ('pleurotus_citrinopileatus', 'log_wood', null, 'suits', 'Soft hardwoods such as poplar, willow and maple suit oysters.', 'Maderas como álamo, sauce y arce van bien con las setas ostra.'),
  ('pleurotus_citrinopileatus', 'spent_substrate', null, 'possible', 'Much of the food is used up: expect a smaller crop and more competitors.', 'Gran parte del alimento ya se consumió: espere menos cosecha y más competidores.'),
  ('pleurotus_citrinopileatus', null, 'hot_water_bath', 'suits', 'The usual treatment for oyster straw.', 'El tratamiento habitual de la paja para setas ostra.'),
  ('pleurotus_citrinopileatus', null, 'cold_lime_soak', 'suits', 'Oysters bear the high pH and competitors do not.', 'Las setas ostra soportan el pH alto y los competidores no.'),
  ('pleurotus_citrinopileatus', null, 'cold_ferment', 'suits', 'Oysters settle quickly in drained fermented straw.', 'Las setas ostra se establecen rápido en paja fermentada y escurrida.'),
  ('pleurotus_citrinopileatus', null, 'steam', 'suits', 'Steamed straw or sawdust suits oysters.', 'La paja o el aserrín al vapor va bien con las setas ostra.'),
  ('pleurotus_citrinopileatus', null, 'untreated', 'possible', 'Only with fresh clean material and much spawn; expect more contamination.', 'Solo con material fresco y limpio y mucha semilla; espere más contaminación.'),
  ('pleurotus_djamor', 'straw', null, 'suits', 'Straw is the usual oyster substrate.', 'La paja es el sustrato habitual de las setas ostra.'),
  ('pleurotus_djamor', 'corn_residue', null, 'suits', 'Oysters grow on stalks, husks and crushed cobs.', 'Las setas ostra crecen en caña, hoja y olote triturado.'),
  ('pleurotus_djamor', 'coffee_grounds', null, 'suits', 'Use grounds within a day of brewing; they mould quickly.', 'Use el poso dentro del día de preparado; se enmohece rápido.'),
  ('pleurotus_djamor', 'husk', null, 'suits', 'Husks and hulls carry oysters well, best mixed with straw.', 'Las cascarillas sirven bien, mejor mezcladas con paja.'),
  ('pleurotus_djamor', 'sawdust', null, 'suits', 'Hardwood sawdust suits oysters.', 'El aserrín de madera dura va bien con las setas ostra.'),
  ('pleurotus_djamor', 'cardboard', null, 'possible', 'Clean cardboard works, with a small crop.', 'El cartón limpio funciona, con poca cosecha.'),
  ('pleurotus_djamor', 'wood_chips', null, 'possible', 'Chips are slow for oysters; mix with straw or sawdust.', 'La astilla es lenta para setas ostra; mezcle con paja o aserrín.'),
  ('pleurotus_djamor', 'log_wood', null, 'suits', 'Soft hardwoods such as poplar, willow and maple suit oysters.', 'Maderas como álamo, sauce y arce van bien con las setas ostra.'),
  ('pleurotus_djamor', 'spent_substrate', null, 'possible', 'Much of the food is used up: expect a smaller crop and more competitors.', 'Gran parte del alimento ya se consumió: espere menos cosecha y más competidores.'),
  ('pleurotus_djamor', null, 'hot_water_bath', 'suits', 'The usual treatment for oyster straw.', 'El tratamiento habitual de la paja para setas ostra.'),
  ('pleurotus_djamor', null, 'cold_lime_soak', 'suits', 'Oysters bear the high pH and competitors do not.', 'Las setas ostra soportan el pH alto y los competidores no.'),
  ('pleurotus_djamor', null, 'cold_ferment', 'suits', 'Oysters settle quickly in drained fermented straw.', 'Las setas ostra se establecen rápido en paja fermentada y escurrida.'),
  ('pleurotus_djamor', null, 'steam', 'suits', 'Steamed straw or sawdust suits oysters.', 'La paja o el aserrín al vapor va bien con las setas ostra.'),
  ('pleurotus_djamor', null, 'untreated', 'possible', 'Only with fresh clean material and much spawn; expect more contamination.', 'Solo con material fresco y limpio y mucha semilla; espere más contaminación.'),
  ('hypsizygus_ulmarius', 'straw', null, 'suits', 'Straw is the usual oyster substrate.', 'La paja es el sustrato habitual de las setas ostra.'),
  ('hypsizygus_ulmarius', 'corn_residue', null, 'suits', 'Oysters grow on stalks, husks and crushed cobs.', 'Las setas ostra crecen en caña, hoja y olote triturado.'),
  ('hypsizygus_ulmarius', 'coffee_grounds', null, 'suits', 'Use grounds within a day of brewing; they mould quickly.', 'Use el poso dentro del día de preparado; se enmohece rápido.'),
  ('hypsizygus_ulmarius', 'husk', null, 'suits', 'Husks and hulls carry oysters well, best mixed with straw.', 'Las cascarillas sirven bien, mejor mezcladas con paja.'),
  ('hypsizygus_ulmarius', 'sawdust', null, 'suits', 'Hardwood sawdust suits oysters.', 'El aserrín de madera dura va bien con las setas ostra.'),
  ('hypsizygus_ulmarius', 'cardboard', null, 'possible', 'Clean cardboard works, with a small crop.', 'El cartón limpio funciona, con poca cosecha.'),
  ('hypsizygus_ulmarius', 'wood_chips', null, 'possible', 'Chips are slow for oysters; mix with straw or sawdust.', 'La astilla es lenta para setas ostra; mezcle con paja o aserrín.'),
  ('hypsizygus_ulmarius', 'log_wood', null, 'suits', 'Soft hardwoods such as poplar, willow and maple suit oysters.', 'Maderas como álamo, sauce y arce van bien con las setas ostra.'),
  ('hypsizygus_ulmarius', 'spent_substrate', null, 'possible', 'Much of the food is used up: expect a smaller crop and more competitors.', 'Gran parte del alimento ya se consumió: espere menos cosecha y más competidores.'),
  ('hypsizygus_ulmarius', null, 'hot_water_bath', 'suits', 'The usual treatment for oyster straw.', 'El tratamiento habitual de la paja para setas ostra.'),
  ('hypsizygus_ulmarius', null, 'cold_lime_soak', 'suits', 'Oysters bear the high pH and competitors do not.', 'Las setas ostra soportan el pH alto y los competidores no.'),
  ('hypsizygus_ulmarius', null, 'cold_ferment', 'suits', 'Oysters settle quickly in drained fermented straw.', 'Las setas ostra se establecen rápido en paja fermentada y escurrida.'),
  ('hypsizygus_ulmarius', null, 'steam', 'suits', 'Steamed straw or sawdust suits oysters.', 'La paja o el aserrín al vapor va bien con las setas ostra.'),
  ('hypsizygus_ulmarius', null, 'untreated', 'possible', 'Only with fresh clean material and much spawn; expect more contamination.', 'Solo con material fresco y limpio y mucha semilla; espere más contaminación.'),
  ('pleurotus_eryngii', 'sawdust', null, 'suits', 'Hardwood sawdust with some bran is the usual substrate.', 'Aserrín de madera dura con algo de salvado es el sustrato habitual.'),
  ('pleurotus_eryngii', 'straw', null, 'possible', 'Fruits on straw, with a smaller crop.', 'Fructifica en paja, con menos cosecha.'),
  ('pleurotus_eryngii', 'corn_residue', null, 'possible', 'Ground cobs work in a mix with sawdust.', 'El olote molido sirve mezclado con aserrín.'),
  ('pleurotus_eryngii', 'husk', null, 'possible', 'Use husks in a mix with sawdust.', 'Use la cascarilla mezclada con aserrín.'),
  ('pleurotus_eryngii', 'wood_chips', null, 'possible', 'Chips alone are slow; mix with sawdust.', 'La astilla sola es lenta; mezcle con aserrín.'),
  ('pleurotus_eryngii', 'log_wood', null, 'possible', 'Logs or stumps of soft hardwood, slow.', 'Troncos o tocones de madera blanda, lento.'),
  ('pleurotus_eryngii', 'coffee_grounds', null, 'unsuited', 'Too slow on coffee grounds: moulds arrive first.', 'Demasiado lento en poso de café: el moho llega antes.'),
  ('pleurotus_eryngii', 'cardboard', null, 'unsuited', 'Cardboard feeds it too little.', 'El cartón la alimenta demasiado poco.'),
  ('pleurotus_eryngii', 'spent_substrate', null, 'possible', 'Much of the food is used up: expect a smaller crop and more competitors.', 'Gran parte del alimento ya se consumió: espere menos cosecha y más competidores.'),
  ('pleurotus_eryngii', null, 'steam', 'suits', 'Long steaming suits enriched blocks.', 'El vapor prolongado va bien con bloques enriquecidos.'),
  ('pleurotus_eryngii', null, 'hot_water_bath', 'possible', 'Without bran or other supplement only.', 'Solo sin salvado ni otro suplemento.'),
  ('pleurotus_eryngii', null, 'cold_ferment', 'unsuited', 'Too slow: competitors return before it has settled.', 'Demasiado lenta: los competidores vuelven antes de que se establezca.'),
  ('pleurotus_eryngii', null, 'cold_lime_soak', 'unsuited', 'Use a lime soak only for oysters and the like; this species does not bear the high pH.', 'Use el remojo en cal solo para setas ostra y similares; esta especie no soporta el pH alto.'),
  ('pleurotus_eryngii', null, 'untreated', 'unsuited', 'Too slow for untreated substrate; on logs this does not apply.', 'Demasiado lenta para sustrato sin tratar; en troncos no se aplica.'),
  ('lentinula_edodes', 'log_wood', null, 'suits', 'Hardwood logs such as oak, maple and ironwood.', 'Troncos de madera dura como roble, arce y palo fierro.'),
  ('lentinula_edodes', 'sawdust', null, 'suits', 'Hardwood sawdust suits it.', 'El aserrín de madera dura le va bien.'),
  ('lentinula_edodes', 'wood_chips', null, 'possible', 'Hardwood chips in a mix with sawdust.', 'Astilla de madera dura mezclada con aserrín.'),
  ('lentinula_edodes', 'straw', null, 'unsuited', 'A mushroom of hardwood: straw is overgrown before it settles.', 'Es un hongo de madera dura: la paja se contamina antes de colonizarse.'),
  ('lentinula_edodes', 'corn_residue', null, 'unsuited', 'A mushroom of hardwood: use corn residues only as a small part of a wood mix.', 'Es un hongo de madera dura: use rastrojo de maíz solo como parte menor de una mezcla con madera.'),
  ('lentinula_edodes', 'coffee_grounds', null, 'unsuited', 'A mushroom of hardwood: coffee grounds mould before it settles.', 'Es un hongo de madera dura: el poso de café se enmohece antes.'),
  ('lentinula_edodes', 'husk', null, 'possible', 'Only as a part of a hardwood sawdust mix.', 'Solo como parte de una mezcla con aserrín de madera dura.'),
  ('lentinula_edodes', 'cardboard', null, 'unsuited', 'A mushroom of hardwood: cardboard feeds it too little.', 'Es un hongo de madera dura: el cartón la alimenta demasiado poco.'),
  ('lentinula_edodes', 'spent_substrate', null, 'possible', 'Much of the food is used up: expect a smaller crop and more competitors.', 'Gran parte del alimento ya se consumió: espere menos cosecha y más competidores.'),
  ('lentinula_edodes', null, 'steam', 'suits', 'Long steaming suits enriched blocks.', 'El vapor prolongado va bien con bloques enriquecidos.'),
  ('lentinula_edodes', null, 'hot_water_bath', 'possible', 'Without bran or other supplement only.', 'Solo sin salvado ni otro suplemento.'),
  ('lentinula_edodes', null, 'cold_ferment', 'unsuited', 'Too slow: competitors return before it has settled.', 'Demasiado lenta: los competidores vuelven antes de que se establezca.'),
  ('lentinula_edodes', null, 'cold_lime_soak', 'unsuited', 'Use a lime soak only for oysters and the like; this species does not bear the high pH.', 'Use el remojo en cal solo para setas ostra y similares; esta especie no soporta el pH alto.'),
  ('lentinula_edodes', null, 'untreated', 'unsuited', 'Too slow for untreated substrate; on logs this does not apply.', 'Demasiado lenta para sustrato sin tratar; en troncos no se aplica.'),
  ('hericium_erinaceus', 'log_wood', null, 'suits', 'Hardwood logs such as oak, maple and ironwood.', 'Troncos de madera dura como roble, arce y palo fierro.'),
  ('hericium_erinaceus', 'sawdust', null, 'suits', 'Hardwood sawdust suits it.', 'El aserrín de madera dura le va bien.'),
  ('hericium_erinaceus', 'wood_chips', null, 'possible', 'Hardwood chips in a mix with sawdust.', 'Astilla de madera dura mezclada con aserrín.'),
  ('hericium_erinaceus', 'straw', null, 'unsuited', 'A mushroom of hardwood: straw is overgrown before it settles.', 'Es un hongo de madera dura: la paja se contamina antes de colonizarse.'),
  ('hericium_erinaceus', 'corn_residue', null, 'unsuited', 'A mushroom of hardwood: use corn residues only as a small part of a wood mix.', 'Es un hongo de madera dura: use rastrojo de maíz solo como parte menor de una mezcla con madera.'),
  ('hericium_erinaceus', 'coffee_grounds', null, 'unsuited', 'A mushroom of hardwood: coffee grounds mould before it settles.', 'Es un hongo de madera dura: el poso de café se enmohece antes.'),
  ('hericium_erinaceus', 'husk', null, 'possible', 'Only as a part of a hardwood sawdust mix.', 'Solo como parte de una mezcla con aserrín de madera dura.'),
  ('hericium_erinaceus', 'cardboard', null, 'unsuited', 'A mushroom of hardwood: cardboard feeds it too little.', 'Es un hongo de madera dura: el cartón la alimenta demasiado poco.'),
  ('hericium_erinaceus', 'spent_substrate', null, 'possible', 'Much of the food is used up: expect a smaller crop and more competitors.', 'Gran parte del alimento ya se consumió: espere menos cosecha y más competidores.'),
  ('hericium_erinaceus', null, 'steam', 'suits', 'Long steaming suits enriched blocks.', 'El vapor prolongado va bien con bloques enriquecidos.'),
  ('hericium_erinaceus', null, 'hot_water_bath', 'possible', 'Without bran or other supplement only.', 'Solo sin salvado ni otro suplemento.'),
  ('hericium_erinaceus', null, 'cold_ferment', 'unsuited', 'Too slow: competitors return before it has settled.', 'Demasiado lenta: los competidores vuelven antes de que se establezca.'),
  ('hericium_erinaceus', null, 'cold_lime_soak', 'unsuited', 'Use a lime soak only for oysters and the like; this species does not bear the high pH.', 'Use el remojo en cal solo para setas ostra y similares; esta especie no soporta el pH alto.'),
  ('hericium_erinaceus', null, 'untreated', 'unsuited', 'Too slow for untreated substrate; on logs this does not apply.', 'Demasiado lenta para sustrato sin tratar; en troncos no se aplica.'),
  ('grifola_frondosa', 'log_wood', null, 'suits', 'Hardwood logs such as oak, maple and ironwood.', 'Troncos de madera dura como roble, arce y palo fierro.'),
  ('grifola_frondosa', 'sawdust', null, 'suits', 'Hardwood sawdust suits it.', 'El aserrín de madera dura le va bien.'),
  ('grifola_frondosa', 'wood_chips', null, 'possible', 'Hardwood chips in a mix with sawdust.', 'Astilla de madera dura mezclada con aserrín.'),
  ('grifola_frondosa', 'straw', null, 'unsuited', 'A mushroom of hardwood: straw is overgrown before it settles.', 'Es un hongo de madera dura: la paja se contamina antes de colonizarse.'),
  ('grifola_frondosa', 'corn_residue', null, 'unsuited', 'A mushroom of hardwood: use corn residues only as a small part of a wood mix.', 'Es un hongo de madera dura: use rastrojo de maíz solo como parte menor de una mezcla con madera.'),
  ('grifola_frondosa', 'coffee_grounds', null, 'unsuited', 'A mushroom of hardwood: coffee grounds mould before it settles.', 'Es un hongo de madera dura: el poso de café se enmohece antes.'),
  ('grifola_frondosa', 'husk', null, 'possible', 'Only as a part of a hardwood sawdust mix.', 'Solo como parte de una mezcla con aserrín de madera dura.'),
  ('grifola_frondosa', 'cardboard', null, 'unsuited', 'A mushroom of hardwood: cardboard feeds it too little.', 'Es un hongo de madera dura: el cartón la alimenta demasiado poco.'),
  ('grifola_frondosa', 'spent_substrate', null, 'possible', 'Much of the food is used up: expect a smaller crop and more competitors.', 'Gran parte del alimento ya se consumió: espere menos cosecha y más competidores.'),
  ('grifola_frondosa', null, 'steam', 'suits', 'Long steaming suits enriched blocks.', 'El vapor prolongado va bien con bloques enriquecidos.'),
  ('grifola_frondosa', null, 'hot_water_bath', 'possible', 'Without bran or other supplement only.', 'Solo sin salvado ni otro suplemento.'),
  ('grifola_frondosa', null, 'cold_ferment', 'unsuited', 'Too slow: competitors return before it has settled.', 'Demasiado lenta: los competidores vuelven antes de que se establezca.'),
  ('grifola_frondosa', null, 'cold_lime_soak', 'unsuited', 'Use a lime soak only for oysters and the like; this species does not bear the high pH.', 'Use el remojo en cal solo para setas ostra y similares; esta especie no soporta el pH alto.'),
  ('grifola_frondosa', null, 'untreated', 'unsuited', 'Too slow for untreated substrate; on logs this does not apply.', 'Demasiado lenta para sustrato sin tratar; en troncos no se aplica.'),
  ('pholiota_nameko', 'log_wood', null, 'suits', 'Hardwood logs such as oak, maple and ironwood.', 'Troncos de madera dura como roble, arce y palo fierro.'),
  ('pholiota_nameko', 'sawdust', null, 'suits', 'Hardwood sawdust suits it.', 'El aserrín de madera dura le va bien.'),
  ('pholiota_nameko', 'wood_chips', null, 'possible', 'Hardwood chips in a mix with sawdust.', 'Astilla de madera dura mezclada con aserrín.'),
  ('pholiota_nameko', 'straw', null, 'unsuited', 'A mushroom of hardwood: straw is overgrown before it settles.', 'Es un hongo de madera dura: la paja se contamina antes de colonizarse.'),
  ('pholiota_nameko', 'corn_residue', null, 'unsuited', 'A mushroom of hardwood: use corn residues only as a small part of a wood mix.', 'Es un hongo de madera dura: use rastrojo de maíz solo como parte menor de una mezcla con madera.'),
  ('pholiota_nameko', 'coffee_grounds', null, 'unsuited', 'A mushroom of hardwood: coffee grounds mould before it settles.', 'Es un hongo de madera dura: el poso de café se enmohece antes.'),
  ('pholiota_nameko', 'husk', null, 'possible', 'Only as a part of a hardwood sawdust mix.', 'Solo como parte de una mezcla con aserrín de madera dura.'),
  ('pholiota_nameko', 'cardboard', null, 'unsuited', 'A mushroom of hardwood: cardboard feeds it too little.', 'Es un hongo de madera dura: el cartón la alimenta demasiado poco.'),
  ('pholiota_nameko', 'spent_substrate', null, 'possible', 'Much of the food is used up: expect a smaller crop and more competitors.', 'Gran parte del alimento ya se consumió: espere menos cosecha y más competidores.'),
  ('pholiota_nameko', null, 'steam', 'suits', 'Long steaming suits enriched blocks.', 'El vapor prolongado va bien con bloques enriquecidos.'),
  ('pholiota_nameko', null, 'hot_water_bath', 'possible', 'Without bran or other supplement only.', 'Solo sin salvado ni otro suplemento.'),
  ('pholiota_nameko', null, 'cold_ferment', 'unsuited', 'Too slow: competitors return before it has settled.', 'Demasiado lenta: los competidores vuelven antes de que se establezca.'),
  ('pholiota_nameko', null, 'cold_lime_soak', 'unsuited', 'Use a lime soak only for oysters and the like; this species does not bear the high pH.', 'Use el remojo en cal solo para setas ostra y similares; esta especie no soporta el pH alto.'),
  ('pholiota_nameko', null, 'untreated', 'unsuited', 'Too slow for untreated substrate; on logs this does not apply.', 'Demasiado lenta para sustrato sin tratar; en troncos no se aplica.'),
  ('cyclocybe_aegerita', 'sawdust', null, 'suits', 'Hardwood sawdust with some bran is the usual substrate.', 'Aserrín de madera dura con algo de salvado es el sustrato habitual.'),
  ('cyclocybe_aegerita', 'straw', null, 'possible', 'Fruits on straw, with a smaller crop.', 'Fructifica en paja, con menos cosecha.'),
  ('cyclocybe_aegerita', 'corn_residue', null, 'possible', 'Ground cobs work in a mix with sawdust.', 'El olote molido sirve mezclado con aserrín.'),
  ('cyclocybe_aegerita', 'husk', null, 'possible', 'Use husks in a mix with sawdust.', 'Use la cascarilla mezclada con aserrín.'),
  ('cyclocybe_aegerita', 'wood_chips', null, 'possible', 'Chips alone are slow; mix with sawdust.', 'La astilla sola es lenta; mezcle con aserrín.'),
  ('cyclocybe_aegerita', 'log_wood', null, 'possible', 'Logs or stumps of soft hardwood, slow.', 'Troncos o tocones de madera blanda, lento.'),
  ('cyclocybe_aegerita', 'coffee_grounds', null, 'unsuited', 'Too slow on coffee grounds: moulds arrive first.', 'Demasiado lento en poso de café: el moho llega antes.'),
  ('cyclocybe_aegerita', 'cardboard', null, 'unsuited', 'Cardboard feeds it too little.', 'El cartón la alimenta demasiado poco.'),
  ('cyclocybe_aegerita', 'spent_substrate', null, 'possible', 'Much of the food is used up: expect a smaller crop and more competitors.', 'Gran parte del alimento ya se consumió: espere menos cosecha y más competidores.'),
  ('cyclocybe_aegerita', null, 'steam', 'suits', 'Long steaming suits enriched blocks.', 'El vapor prolongado va bien con bloques enriquecidos.'),
  ('cyclocybe_aegerita', null, 'hot_water_bath', 'possible', 'Without bran or other supplement only.', 'Solo sin salvado ni otro suplemento.'),
  ('cyclocybe_aegerita', null, 'cold_ferment', 'unsuited', 'Too slow: competitors return before it has settled.', 'Demasiado lenta: los competidores vuelven antes de que se establezca.'),
  ('cyclocybe_aegerita', null, 'cold_lime_soak', 'unsuited', 'Use a lime soak only for oysters and the like; this species does not bear the high pH.', 'Use el remojo en cal solo para setas ostra y similares; esta especie no soporta el pH alto.'),
  ('cyclocybe_aegerita', null, 'untreated', 'unsuited', 'Too slow for untreated substrate; on logs this does not apply.', 'Demasiado lenta para sustrato sin tratar; en troncos no se aplica.'),
  ('stropharia_rugosoannulata', 'wood_chips', null, 'suits', 'Fresh hardwood chips are the usual bed.', 'La astilla fresca de madera dura es la cama habitual.'),
  ('stropharia_rugosoannulata', 'straw', null, 'suits', 'Straw beds fruit sooner and are used up sooner.', 'Las camas de paja fructifican antes y se agotan antes.'),
  ('stropharia_rugosoannulata', 'sawdust', null, 'possible', 'Mix with chips so that the bed keeps air.', 'Mezcle con astilla para que la cama tenga aire.'),
  ('stropharia_rugosoannulata', 'corn_residue', null, 'possible', 'Chopped stalks in a mix with chips or straw.', 'Caña picada mezclada con astilla o paja.'),
  ('stropharia_rugosoannulata', 'cardboard', null, 'possible', 'As a bottom layer under the chips.', 'Como capa inferior bajo la astilla.'),
  ('stropharia_rugosoannulata', 'log_wood', null, 'unsuited', 'Wine cap grows in beds on the ground, not on logs.', 'La estrofaria crece en camas sobre el suelo, no en troncos.'),
  ('stropharia_rugosoannulata', 'coffee_grounds', null, 'unsuited', 'Grounds mould before wine cap settles.', 'El poso se enmohece antes de que la estrofaria se establezca.'),
  ('stropharia_rugosoannulata', 'spent_substrate', null, 'possible', 'Much of the food is used up: expect a smaller crop and more competitors.', 'Gran parte del alimento ya se consumió: espere menos cosecha y más competidores.'),
  ('stropharia_rugosoannulata', null, 'untreated', 'suits', 'Fresh chips or straw need no treatment for an outdoor bed.', 'La astilla o paja fresca no necesita tratamiento para una cama al aire libre.'),
  ('stropharia_rugosoannulata', null, 'cold_ferment', 'suits', 'Fermented and drained material makes a good bed.', 'El material fermentado y escurrido hace una buena cama.'),
  ('stropharia_rugosoannulata', null, 'hot_water_bath', 'possible', 'Works, more work than a bed needs.', 'Funciona, con más trabajo del que una cama necesita.'),
  ('stropharia_rugosoannulata', null, 'steam', 'possible', 'Works, more work than a bed needs.', 'Funciona, con más trabajo del que una cama necesita.'),
  ('stropharia_rugosoannulata', null, 'cold_lime_soak', 'unsuited', 'Use a lime soak only for oysters and the like; this species does not bear the high pH.', 'Use el remojo en cal solo para setas ostra y similares; esta especie no soporta el pH alto.'),
  ('agaricus_subrufescens', 'straw', null, 'possible', 'Straw must be composted first.', 'La paja debe compostarse antes.'),
  ('agaricus_subrufescens', 'spent_substrate', null, 'suits', 'Spent oyster substrate mixed with compost feeds it.', 'El sustrato gastado de seta ostra mezclado con composta la alimenta.'),
  ('agaricus_subrufescens', 'wood_chips', null, 'possible', 'Composted chips in part of the mix.', 'Astilla compostada en parte de la mezcla.'),
  ('agaricus_subrufescens', 'corn_residue', null, 'possible', 'Composted cobs in part of the mix.', 'Olote compostado en parte de la mezcla.'),
  ('agaricus_subrufescens', 'log_wood', null, 'unsuited', 'Grows on compost, not on wood.', 'Crece en composta, no en madera.'),
  ('agaricus_subrufescens', 'cardboard', null, 'unsuited', 'Grows on compost, cardboard feeds it too little.', 'Crece en composta, el cartón la alimenta poco.'),
  ('agaricus_subrufescens', null, 'steam', 'suits', 'Steam finishes the compost.', 'El vapor termina la composta.'),
  ('agaricus_subrufescens', null, 'hot_water_bath', 'possible', 'For straw that was not composted.', 'Para paja no compostada.'),
  ('agaricus_subrufescens', null, 'cold_ferment', 'possible', 'For straw beds in warm weather.', 'Para camas de paja en clima cálido.'),
  ('agaricus_subrufescens', null, 'cold_lime_soak', 'unsuited', 'Use a lime soak only for oysters and the like; this species does not bear the high pH.', 'Use el remojo en cal solo para setas ostra y similares; esta especie no soporta el pH alto.'),
  ('agaricus_subrufescens', null, 'untreated', 'possible', 'Only with well-finished compost or clean fresh straw.', 'Solo con composta bien terminada o paja fresca y limpia.'),
  ('volvariella_volvacea', 'straw', null, 'suits', 'Rice straw is the usual bed.', 'La paja de arroz es la cama habitual.'),
  ('volvariella_volvacea', 'husk', null, 'possible', 'Cotton and other husks, composted a little first.', 'Cascarilla de algodón y otras, algo compostadas antes.'),
  ('volvariella_volvacea', 'log_wood', null, 'unsuited', 'Grows on straw, not on wood.', 'Crece en paja, no en madera.'),
  ('volvariella_volvacea', 'wood_chips', null, 'unsuited', 'Grows on straw, not on wood.', 'Crece en paja, no en madera.'),
  ('volvariella_volvacea', 'sawdust', null, 'unsuited', 'Grows on straw, not on wood.', 'Crece en paja, no en madera.'),
  ('volvariella_volvacea', null, 'steam', 'suits', 'Steam finishes the compost.', 'El vapor termina la composta.'),
  ('volvariella_volvacea', null, 'hot_water_bath', 'possible', 'For straw that was not composted.', 'Para paja no compostada.'),
  ('volvariella_volvacea', null, 'cold_ferment', 'possible', 'For straw beds in warm weather.', 'Para camas de paja en clima cálido.'),
  ('volvariella_volvacea', null, 'cold_lime_soak', 'unsuited', 'Use a lime soak only for oysters and the like; this species does not bear the high pH.', 'Use el remojo en cal solo para setas ostra y similares; esta especie no soporta el pH alto.'),
  ('volvariella_volvacea', null, 'untreated', 'possible', 'Only with well-finished compost or clean fresh straw.', 'Solo con composta bien terminada o paja fresca y limpia.'),
  (null, 'log_wood', 'hot_water_bath', 'unsuited', 'Logs are inoculated fresh and untreated; the bark keeps competitors out.', 'Los troncos se siembran frescos y sin tratar; la corteza mantiene fuera a los competidores.'),
  (null, 'log_wood', 'cold_lime_soak', 'unsuited', 'Logs are inoculated fresh and untreated; the bark keeps competitors out.', 'Los troncos se siembran frescos y sin tratar; la corteza mantiene fuera a los competidores.'),
  (null, 'log_wood', 'cold_ferment', 'unsuited', 'Logs are inoculated fresh and untreated; the bark keeps competitors out.', 'Los troncos se siembran frescos y sin tratar; la corteza mantiene fuera a los competidores.'),
  (null, 'log_wood', 'steam', 'unsuited', 'Logs are inoculated fresh and untreated; the bark keeps competitors out.', 'Los troncos se siembran frescos y sin tratar; la corteza mantiene fuera a los competidores.'),
  (null, 'coffee_grounds', 'hot_water_bath', 'unsuited', 'Brewing has already heated the grounds, and soaked grounds hold too much water.', 'El poso ya se calentó al preparar el café, y remojado retiene demasiada agua.'),
  (null, 'coffee_grounds', 'cold_lime_soak', 'unsuited', 'Brewing has already heated the grounds, and soaked grounds hold too much water.', 'El poso ya se calentó al preparar el café, y remojado retiene demasiada agua.'),
  (null, 'coffee_grounds', 'cold_ferment', 'unsuited', 'Brewing has already heated the grounds, and soaked grounds hold too much water.', 'El poso ya se calentó al preparar el café, y remojado retiene demasiada agua.'),
  (null, 'sawdust', 'cold_ferment', 'unsuited', 'Sawdust packs under water and is hard to drain.', 'El aserrín se compacta bajo el agua y escurre mal.')
;
insert into public.suitability (network_id, species_id, material_kind, method_kind, verdict, reason_en, reason_es)
  select s.network_id, s.id, d.material::public.material_kind, d.method::public.method_kind, d.verdict::public.suitability_verdict, d.reason_en, d.reason_es
  from default_suitability d join public.species s on s.code = d.species_code;
insert into public.suitability (network_id, material_kind, method_kind, verdict, reason_en, reason_es)
  select n.id, d.material::public.material_kind, d.method::public.method_kind, d.verdict::public.suitability_verdict, d.reason_en, d.reason_es
  from default_suitability d cross join public.network n
  where d.species_code is null and exists (select 1 from public.species s where s.network_id = n.id);

-- The network's own word on lime goes before the default.
update public.suitability w set verdict = 'unsuited',
    reason_en = 'This network found that it does not bear a lime soak.',
    reason_es = 'Esta red vio que no soporta el remojo en cal.'
  from public.species s
  where s.network_id = w.network_id and s.id = w.species_id and w.method_kind = 'cold_lime_soak'
    and w.verdict = 'suits' and not s.lime_tolerant;
update public.suitability w set verdict = 'suits',
    reason_en = 'This network found that it bears a lime soak.',
    reason_es = 'Esta red vio que soporta el remojo en cal.'
  from public.species s
  where s.network_id = w.network_id and s.id = w.species_id and w.method_kind = 'cold_lime_soak'
    and w.verdict <> 'suits' and s.lime_tolerant;
insert into public.suitability (network_id, species_id, method_kind, verdict, reason_en, reason_es)
  select s.network_id, s.id, 'cold_lime_soak', 'unsuited',
    'Use a lime soak only for oysters and the like; this species does not bear the high pH.',
    'Use el remojo en cal solo para setas ostra y similares; esta especie no soporta el pH alto.'
  from public.species s
  where not s.lime_tolerant and not exists (
    select 1 from public.suitability w
    where w.network_id = s.network_id and w.species_id = s.id and w.method_kind = 'cold_lime_soak');
alter table public.species drop column lime_tolerant;
alter table public.species force row level security;
alter table public.network force row level security;

alter table public.suitability enable row level security;
alter table public.suitability force row level security;
create policy coordinator_all on public.suitability for all to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator')
  with check (network_id = (select app.network_id()) and (select app.member_role()) = 'coordinator');
create policy member_read on public.suitability for select to pinset_app
  using (network_id = (select app.network_id()) and (select app.member_role()) = 'member');

-- The mass of material that went into a load, as it was put in: what heat, lime and water were meant for.
alter table public.treatment_run add column load_grams integer;
alter table public.treatment_run add constraint treatment_run_load check (load_grams > 0);
