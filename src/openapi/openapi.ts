import { z } from 'zod';
import { BODIES, type SchemaName } from '../http/bodies.ts';
import { PROBLEM_MEDIA_TYPE, PROBLEMS } from '../http/problem.ts';
import { AS_TAKEN_IN } from '../schema/described.ts';
import { OPERATIONS, type Operation } from './operations.ts';

const SECURITY_SCHEMES = {
  bearer: { type: 'http', scheme: 'bearer', description: 'A key of one crew.' },
  signature: {
    type: 'apiKey',
    in: 'header',
    name: 'webhook-signature',
    description: 'Standard Webhooks 1.0.0, with webhook-id, webhook-timestamp and the crew in ?crew=.',
  },
  cookie: {
    type: 'apiKey',
    in: 'cookie',
    name: 'wallhand',
    description: 'Kept by the chat page, for its own pages only.',
  },
};

/** The OpenAPI 3.1 description, made from the schemas that judge the requests. `keyed` servers ask for a key. */
export function openApi(keyed: boolean): object {
  const paths: Record<string, Record<string, unknown>> = {};
  for (const operation of OPERATIONS) {
    const path = paths[operation.path] ?? {};
    path[operation.method] = described(operation, keyed);
    paths[operation.path] = path;
  }
  return {
    openapi: '3.1.0',
    info: {
      title: 'wallhand',
      version: '0.1.0',
      license: { name: 'MIT', identifier: 'MIT' },
      description:
        'Set-out, fixing and cautions for hanging heavy framed pictures and mirrors. Lengths in millimetres, masses in kilograms, forces in newtons. It never says that a wall is safe.',
    },
    paths,
    components: {
      schemas: componentSchemas(),
      ...(keyed && { securitySchemes: SECURITY_SCHEMES }),
    },
  };
}

function described(operation: Operation, keyed: boolean): object {
  const { summary, id, parameters, takes, gives, problems } = operation;
  const refused = problems.filter((name) => keyed || name !== 'unauthorised');
  const responses: Record<string, object> = Object.fromEntries(
    gives.map(({ status, description, schema, type = 'application/json' }) => [
      status,
      {
        description,
        ...(type !== '' && {
          content: { [type]: { schema: schema ? reference(schema) : { type: 'string' } } },
        }),
      },
    ]),
  );
  for (const status of new Set(refused.map((name) => PROBLEMS[name].status))) {
    const titles = refused
      .filter((name) => PROBLEMS[name].status === status)
      .map((name) => PROBLEMS[name].title);
    responses[status] = {
      description: `${titles.join('; ')}.`,
      content: { [PROBLEM_MEDIA_TYPE]: { schema: reference('Problem') } },
    };
  }
  return {
    operationId: id,
    summary,
    ...(parameters && { parameters }),
    ...(takes && { requestBody: requestBody(takes) }),
    responses,
    ...(keyed &&
      refused.includes('unauthorised') && { security: [{ bearer: [] }, { signature: [] }, { cookie: [] }] }),
  };
}

function requestBody({ schema, type = 'application/json' }: NonNullable<Operation['takes']>): object {
  return {
    required: true,
    content: { [type]: { schema: typeof schema === 'string' ? reference(schema) : schema } },
  };
}

function reference(name: SchemaName): object {
  return { $ref: `#/components/schemas/${name}` };
}

/** Named bodies and the named parts in them, all of which zod keeps by name once they are made. */
function componentSchemas(): Record<string, object> {
  const { schemas } = z.toJSONSchema(z.globalRegistry, {
    ...AS_TAKEN_IN,
    uri: (id) => `#/components/schemas/${id}`,
  });
  const missing = Object.keys(BODIES).filter((name) => !Object.hasOwn(schemas, name));
  if (missing.length > 0) throw new Error(`no schema is named ${missing.join(', ')}`);
  return Object.fromEntries(
    Object.entries(schemas).map(([name, { $schema: _, $id: __, ...schema }]) => [name, schema]),
  );
}
