/** Does the task that the command line names, with its arguments as JSON, and prints the answer as JSON. */
export async function answerAsked(tasks: Readonly<Record<string, unknown>>): Promise<void> {
  const [name = "", args = "[]"] = process.argv.slice(2);
  const task = tasks[name];
  if (typeof task !== "function") throw new Error(`there is no task ${name}`);
  const answer: unknown = await task(...(JSON.parse(args) as unknown[]));
  process.stdout.write(`${JSON.stringify(answer ?? null)}\n`);
}
