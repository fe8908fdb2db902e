import react from "@vitejs/plugin-react";
import { defaultClientConditions, defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { germanOnDemand } from "./german-on-demand.ts";
import { lighterReact } from "./lighter-react.ts";

// The house's packages are read from source, as everywhere; see STYLE 2.
const resolve = { conditions: ["source", ...defaultClientConditions] };

export default defineConfig({
  base: "./",
  resolve,
  worker: { format: "es", plugins: () => [germanOnDemand()] },
  build: { target: "es2022", sourcemap: true, assetsInlineLimit: 0 },
  plugins: [
    react(),
    lighterReact(),
    VitePWA({
      // Never by itself: a reload under wet hands loses the place on the round.
      registerType: "prompt",
      injectRegister: false,
      manifest: {
        name: "Sillwood",
        short_name: "Sillwood",
        description: "Bench book and reckoner for miniature chilli trees",
        start_url: "./",
        display: "standalone",
        background_color: "#FAF7F0",
        theme_color: "#FAF7F0",
        icons: [
          { src: "mark-192.png", sizes: "192x192", type: "image/png" },
          { src: "mark-512.png", sizes: "512x512", type: "image/png" },
          { src: "mark.svg", sizes: "any", type: "image/svg+xml" },
        ],
      },
      workbox: {
        globPatterns: ["**/*.{html,js,css,svg,png,woff2}"],
        // A page that was opened before its worker stood works without a line from then on, not from the next visit.
        clientsClaim: true,
        navigateFallback: "index.html",
        navigateFallbackDenylist: [/^\/(books|health|openapi)/],
        maximumFileSizeToCacheInBytes: 6_000_000,
      },
    }),
  ],
});
