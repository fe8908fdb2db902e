import { type AnyEntryKind, envelopeSchema, type KindRegistry } from "@sillwood/bench/book";
import { toJsonSchema } from "@valibot/to-json-schema";
import type { BaseIssue, BaseSchema } from "valibot";
import { entryExample, NAMED, PERSON, SUMMARY } from "./openapi-examples.ts";
import { problemSchema } from "./problem.ts";
import { asideAnswer, asideRequest } from "./routes/aside.ts";
import { FILE_TYPES } from "./routes/files.ts";
import * as pair from "./routes/pair.ts";
import { cardSchema } from "./routes/people.ts";
import * as sync from "./routes/sync-schemas.ts";

type AnySchema = BaseSchema<unknown, unknown, BaseIssue<unknown>>;

/** A schema as JSON Schema. What JSON Schema has no word for (a check written as a function) is left to the server's answer. */
export function jsonSchemaOf(schema: AnySchema): object {
  const { $schema: _draft, ...rest } = toJsonSchema(schema as never, {
    errorMode: "ignore",
    typeMode: "input",
    target: "draft-2020-12",
  });
  return rest;
}

/** OpenAPI 3.1 of the whole interface, made from the schemas that judge it, with an example for every body. */
export function openApiDocument(kinds: KindRegistry, book: string): object {
  const problem = {
    description: "what is wrong",
    content: { "application/problem+json": { schema: ref("Problem") } },
  };
  const json = (schema: string) => ({ "application/json": { schema: ref(schema) } });
  const answered = (schema: string) => ({
    200: { description: "done", content: json(schema) },
    default: problem,
  });
  const posted = (summary: string, request: string, answer: string, examples: object) => ({
    post: {
      summary,
      parameters: [bookParameter(book)],
      requestBody: { required: true, content: { "application/json": { schema: ref(request), examples } } },
      responses: answered(answer),
    },
  });
  const entries = Object.fromEntries(
    kinds.all.map((kind) => [kind.kind, { value: { entries: [entryExample(kind)], redacted: [] } }]),
  );
  return {
    openapi: "3.1.0",
    info: {
      title: "Sillwood",
      version: "1",
      description:
        "The book of a small grower of miniature chilli trees. On this machine nobody is asked for a key; at any other door every address below /books needs one (a bearer, or the cookie that /pair sets): 401 says pair, 423 says that the grower has closed this device.",
    },
    paths: {
      "/books": {
        get: {
          summary: "Which books are here",
          responses: { 200: { description: "done" }, default: problem },
        },
      },
      "/health": {
        get: {
          summary: "Whether the server is well",
          responses: { 200: { description: "well" }, default: problem },
        },
      },
      "/books/{book}/sync/summary": posted("Compare digests", "SummaryRequest", "SummaryAnswer", {
        one: { value: SUMMARY },
      }),
      "/books/{book}/sync/entries": posted("Push entries", "EntriesRequest", "EntriesAnswer", entries),
      "/books/{book}/sync/fetch": posted("Fetch entries", "FetchRequest", "FetchAnswer", {
        one: { value: NAMED },
      }),
      "/books/{book}/news": {
        get: {
          summary: "Server-sent events: something new",
          parameters: [bookParameter(book)],
          responses: {
            200: { description: "events", content: { "text/event-stream": {} } },
            default: problem,
          },
        },
      },
      "/books/{book}/export": {
        get: {
          summary: "The whole book as lines of JSON",
          parameters: [bookParameter(book)],
          responses: {
            200: { description: "lines", content: { "application/x-ndjson": {} } },
            default: problem,
          },
        },
      },
      "/books/{book}/files/{hash}": filePaths(book, problem),
      "/books/{book}/people": listPath(
        book,
        problem,
        "Who has a card: names for the grower, display names for others",
      ),
      "/books/{book}/people/{person}": peoplePaths(book, problem),
      "/books/{book}/devices": listPath(book, problem, "Paired devices, for the grower"),
      "/books/{book}/pairing": posted("Make a code that lets one device in", "CodeRequest", "CodeAnswer", {
        one: { value: { person: PERSON, role: "helper" } },
      }),
      "/books/{book}/aside": {
        ...listPath(book, problem, "Entries that wait for the grower"),
        ...posted("Take them into the book, or drop them", "AsideRequest", "AsideAnswer", {
          one: { value: { take: NAMED.refs, drop: [] } },
        }),
      },
      "/pair": {
        post: {
          summary: "Let a device in by a code",
          requestBody: {
            required: true,
            content: { "application/json": { schema: ref("PairRequest") } },
          },
          responses: answered("PairAnswer"),
        },
      },
      "/leave": {
        post: {
          summary: "Close this device's own key",
          responses: { 204: { description: "closed" }, default: problem },
        },
      },
    },
    components: {
      securitySchemes: {
        bearer: { type: "http", scheme: "bearer" },
        cookie: { type: "apiKey", in: "cookie", name: "__Host-sillwood" },
      },
      schemas: {
        Problem: jsonSchemaOf(problemSchema),
        Entry: { description: "The envelope; `data` belongs to the kind", ...jsonSchemaOf(envelopeSchema) },
        SummaryRequest: jsonSchemaOf(sync.summaryRequest),
        SummaryAnswer: jsonSchemaOf(sync.summaryAnswer),
        EntriesRequest: jsonSchemaOf(sync.entriesRequest),
        EntriesAnswer: jsonSchemaOf(sync.entriesAnswer),
        FetchRequest: jsonSchemaOf(sync.fetchRequest),
        FetchAnswer: jsonSchemaOf(sync.fetchAnswer),
        PersonCard: jsonSchemaOf(cardSchema),
        CodeRequest: jsonSchemaOf(pair.codeRequest),
        CodeAnswer: jsonSchemaOf(pair.codeAnswer),
        PairRequest: jsonSchemaOf(pair.pairRequest),
        PairAnswer: jsonSchemaOf(pair.pairAnswer),
        AsideRequest: jsonSchemaOf(asideRequest),
        AsideAnswer: jsonSchemaOf(asideAnswer),
        ...Object.fromEntries(kinds.all.map((kind) => [`data.${kind.kind}`, kindSchema(kind)])),
      },
    },
  };
}

const ref = (name: string) => ({ $ref: `#/components/schemas/${name}` });
const bookParameter = (book: string) => ({
  name: "book",
  in: "path",
  required: true,
  schema: { type: "string" },
  example: book,
});
const kindSchema = (kind: AnyEntryKind) => ({
  title: kind.kind,
  description: `version ${kind.v}, read by ${kind.readers}`,
  ...jsonSchemaOf(kind.schema),
  examples: [kind.example],
});

function listPath(book: string, problem: object, summary: string) {
  return {
    get: {
      summary,
      parameters: [bookParameter(book)],
      responses: { 200: { description: "the list" }, default: problem },
    },
  };
}

function filePaths(book: string, problem: object) {
  const hash = {
    name: "hash",
    in: "path",
    required: true,
    schema: { type: "string", pattern: "^[0-9a-f]{64}$" },
  };
  const content = Object.fromEntries(FILE_TYPES.map((type) => [type, {}]));
  return {
    parameters: [bookParameter(book), hash],
    get: {
      summary: "A photo or a part of a series",
      responses: { 200: { description: "its bytes", content }, default: problem },
    },
    put: {
      summary: "Put a file under its SHA-256",
      requestBody: { required: true, content },
      responses: { 201: { description: "kept" }, default: problem },
    },
  };
}

function peoplePaths(book: string, problem: object) {
  const person = {
    name: "person",
    in: "path",
    required: true,
    schema: { type: "string" },
    example: "0193a5c8-7b1e-7abc-8def-0123456789ab",
  };
  const content = {
    "application/json": { schema: ref("PersonCard"), examples: { one: { value: { name: "A helper" } } } },
  };
  return {
    parameters: [bookParameter(book), person],
    get: {
      summary: "A person card",
      responses: { 200: { description: "the card", content }, default: problem },
    },
    put: {
      summary: "Write a person card",
      requestBody: { required: true, content },
      responses: { 204: { description: "written" }, default: problem },
    },
    delete: {
      summary: "Erase a person card",
      responses: { 204: { description: "erased" }, default: problem },
    },
  };
}
