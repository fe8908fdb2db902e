import { Hono } from "hono";
import { doorKeeper } from "./access/door.ts";
import { guard } from "./guard.ts";
import { type AppOptions, houseOf } from "./house.ts";
import { HttpProblem, problemResponse } from "./problem.ts";
import { asideRoutes } from "./routes/aside.ts";
import { authorityRoute } from "./routes/authority.ts";
import { bookRoutes } from "./routes/books.ts";
import { deviceRoutes } from "./routes/devices.ts";
import { exportRoute } from "./routes/export.ts";
import { fileRoutes } from "./routes/files.ts";
import { newsRoute } from "./routes/news.ts";
import { openApiRoute } from "./routes/openapi.ts";
import { pairRoutes } from "./routes/pair.ts";
import { peopleRoutes } from "./routes/people.ts";
import { syncRoutes } from "./routes/sync.ts";
import { webAppRoute } from "./routes/web-app.ts";
import { safeHeaders } from "./safe-headers.ts";

export type { AppOptions } from "./house.ts";
export { makeNews, type News } from "./news.ts";

/**
 * The server as a function from requests to answers: no port, no clock of its own, so that tests call it in process.
 * A door of "this machine" asks nobody for a key, and listen.ts binds it nowhere else; any other door asks everybody.
 */
export function createApp(options: AppOptions): Hono {
  const house = houseOf(options);
  const log = options.log ?? console.error;
  const app = new Hono();
  app.onError((error) => problemResponse(error, log));
  app.notFound(() => problemResponse(new HttpProblem(404, "there is nothing here"), log));
  app.use(safeHeaders, guard(options));
  if (options.behindProxy)
    app.use(async (c, next) => {
      await next();
      c.res.headers.set("strict-transport-security", "max-age=31536000");
    });
  app.use(async (c, next) => {
    c.set("behindProxy" as never, (options.behindProxy ?? false) as never);
    await next();
  });
  app.use(doorKeeper(house.store, { door: options.door ?? "this machine", now_ms: house.now_ms }));
  if (options.authority) authorityRoute(app, options.authority);
  pairRoutes(app, house);
  deviceRoutes(app, house);
  asideRoutes(app, house);
  bookRoutes(app, house);
  syncRoutes(app, house);
  newsRoute(app, house);
  fileRoutes(app, house);
  exportRoute(app, house);
  peopleRoutes(app, house);
  openApiRoute(app, house);
  // Below these addresses lives the interface for programs: what is not there is an error, never a page.
  app.all("/books/*", (c) => c.notFound());
  app.all("/openapi/*", (c) => c.notFound());
  if (options.webDir !== undefined) webAppRoute(app, options.webDir);
  return app;
}
