import { errorOf, type FieldContext, textOf } from '../form/field-context';
import { fieldId } from '../form/field-id';
import { FieldSet } from '../form/fields/field-set';

export type Tile = {
  readonly value: string;
  readonly label: string;
  /** Shown once the tile is chosen. */
  readonly after?: string;
};

type Props = {
  readonly name: string;
  readonly label: string;
  readonly tiles: readonly Tile[];
  readonly context: FieldContext;
  /** Short words stand two in a row. */
  readonly two?: boolean;
};

/** One choice of a few as large tiles, for a thumb in a glove. */
export function ChoiceTiles({ name, label, tiles, context, two = false }: Props) {
  const chosen = textOf(context, name);
  const invalid = errorOf(context, name) === undefined ? undefined : true;
  return (
    <FieldSet spec={{ name, label }} context={context}>
      <div className={two ? 'tiles tiles-two' : 'tiles'}>
        {tiles.map(({ value, label: text, after }, index) => {
          const id = index === 0 ? fieldId(name) : `${fieldId(name)}-${value}`;
          return [
            <label key={value} className="choice tile">
              <input
                id={id}
                type="radio"
                name={name}
                value={value}
                defaultChecked={value === chosen}
                aria-invalid={invalid}
                aria-describedby={after === undefined ? undefined : `${id}-after`}
              />
              <span>{text}</span>
            </label>,
            after === undefined ? null : (
              <p key={`${value}-after`} id={`${id}-after`} className="tile-after">
                {after}
              </p>
            ),
          ];
        })}
      </div>
    </FieldSet>
  );
}
