import type { TableField } from '../table-field';

const role: TableField = {
  name: 'role',
  target: 'role',
  cell: 'choice',
  options: {
    member: ['grower', 'volunteer', 'site', 'gardener', 'miembro', 'integrante', 'cultivador', 'voluntario'],
    coordinator: ['network coordinator', 'coordination', 'coordinador', 'coordinadora', 'coordinacion'],
    funder: ['donor', 'financiador', 'financiadora', 'financiacion', 'donante'],
  },
  words: ['role', 'as', 'function', 'task', 'rol', 'papel', 'funcion', 'cargo', 'puesto'],
};

/** Somebody to be invited. Who has an account gets it by accepting, never from a table. */
export const peopleFields: readonly TableField[] = [
  {
    name: 'name',
    target: 'forName',
    cell: 'text',
    needed: { orBy: 'firstName' },
    words: ['name', 'full name', 'person', 'who', 'nombre completo', 'persona', 'nombre y apellidos'],
  },
  {
    name: 'firstName',
    target: 'firstName',
    cell: 'text',
    words: ['first name', 'given name', 'nombre', 'nombres', 'nombre de pila'],
  },
  {
    name: 'lastName',
    target: 'lastName',
    cell: 'text',
    words: ['last name', 'surname', 'family name', 'apellido', 'apellidos'],
  },
  {
    name: 'email',
    target: 'forEmail',
    cell: 'text',
    needed: true,
    words: ['email', 'e mail', 'mail', 'email address', 'e mail address', 'correo', 'correo electronico'],
  },
  role,
  {
    name: 'sites',
    target: 'siteIds',
    cell: 'references',
    of: 'site',
    words: ['sites', 'site', 'gardens', 'garden', 'farm', 'sitio', 'sitios', 'huerta', 'huertas', 'finca'],
  },
];
