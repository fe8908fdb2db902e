/* Light behind one pane: what a crown of nine points sees through it, then every step of many days. The reference beside which
   our own speed stands; the same sums as `paneView` and `windowDays` of the science package.
   usage: reference-window INPUT DAYS RUNS OUTPUT; INPUT holds the scalars of `struct place`, then the radiation of each day. */
#define _POSIX_C_SOURCE 199309L
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#define PI 3.14159265358979323846
#define PLANES 7
#define COLUMNS 24
#define ROWS 16
#define GLASS 256
#define POINTS 9
#define ROW (2 * PLANES + 1)
#define SCALARS 18

struct place {
  double latitude, facing, left, right, bottom, top, distance, reveal, horizon, panes, transmittance, refraction, albedo, facade,
      overcast, crown, step_min, photons;
};
struct view {
  double sky[2 * PLANES], ground[PLANES], glass[GLASS + 1], openings[POINTS][8], horizon[361];
};

static double greater(double a, double b) { return a > b ? a : b; }
static double less(double a, double b) { return a < b ? a : b; }

/* Transmitted and reflected share of one pane, both polarisations. */
static void slab(double cosine, double n, double depth, double *through, double *back) {
  *through = 0, *back = 1;
  if (cosine <= 0) return;
  double sine = sqrt(greater(0, 1 - cosine * cosine)) / n, inner = sqrt(1 - sine * sine);
  double s = (cosine - n * inner) / (cosine + n * inner), p = (inner - n * cosine) / (inner + n * cosine);
  double both[2] = {s * s, p * p}, kept = exp(-depth / inner);
  *back = 0;
  for (int i = 0; i < 2; i++) {
    double r = both[i], t = kept * (1 - r) * (1 - r) / (1 - r * r * kept * kept);
    *through += t / 2, *back += r * (1 + kept * t) / 2;
  }
}

static double stack(double cosine, int panes, double n, double depth) {
  double t, r, t1, r1;
  slab(cosine, n, depth, &t1, &r1);
  t = t1, r = r1;
  for (int pane = 1; pane < panes; pane++) {
    double between = 1 - r * r1;
    if (between <= 1e-12) return 0;
    r = r + t * t * r1 / between, t = t * t1 / between;
  }
  return t;
}

static double glass_at(const double *glass, double cosine) {
  double at = cosine * GLASS;
  int before = (int)less(GLASS - 1, floor(at));
  return glass[before] + (glass[before + 1] - glass[before]) * (at - before);
}

static double horizon_at(const double *horizon, double azimuth) {
  double turns = azimuth * 180 / PI, at = turns - 360 * floor(turns / 360);
  int before = (int)at;
  double next = before < 360 ? horizon[before + 1] : horizon[before];
  return horizon[before] + (next - horizon[before]) * (at - before);
}

/* One stretch of a column of directions, from low to high: an even sky in the first planes, an overcast one in the next. */
static void stretch(const double *glass, double u, double du, const double *upright, double low, double high, double *into) {
  if (!(high > low)) return;
  double dv = (high - low) / ROWS, ahead = cos(u), sums[6] = {0};
  for (int row = 0; row < ROWS; row++) {
    double v = low + (row + 0.5) * dv, up = sin(v), out = cos(v);
    double part = glass_at(glass, ahead * out) * out, brighter = 3.0 / 7 * (1 + 2 * up), level = part * greater(0, up);
    sums[0] += level, sums[1] += part * out, sums[2] += part;
    sums[3] += level * brighter, sums[4] += part * out * brighter, sums[5] += part * brighter;
  }
  double scale = du * dv / PI / POINTS;
  for (int sky = 0; sky < 2; sky++) {
    const double *sum = sums + 3 * sky;
    double *to = into + PLANES * sky;
    to[0] += scale * sum[0], to[1] += scale * sum[1] * upright[0], to[2] += scale * sum[2];
    for (int side = 1; side <= 4; side++) to[2 + side] += scale * sum[1] * upright[side];
  }
}

static void see(const struct place *p, struct view *view) {
  memset(view, 0, sizeof *view);
  double low = 0, high = 12, t, r;
  for (int round = 0; round < 60; round++) {
    double middle = (low + high) / 2;
    slab(1, p->refraction, middle, &t, &r);
    if (t > p->transmittance) low = middle; else high = middle;
  }
  for (int i = 0; i <= GLASS; i++) view->glass[i] = stack((double)i / GLASS, (int)p->panes, p->refraction, (low + high) / 2);
  for (int i = 0; i <= 360; i++) view->horizon[i] = p->horizon;
  for (int point = 0; point < POINTS; point++) {
    double across = p->crown / 3 * (point / 3 - 1), inner = greater(0.02, p->distance + p->crown / 3 * (point % 3 - 1));
    double outer = inner + p->reveal, edges[4] = {p->left - across, p->right - across, p->bottom, p->top};
    for (int side = 0; side < 4; side++)
      view->openings[point][side] = edges[side] / inner, view->openings[point][4 + side] = edges[side] / outer;
    double facade[2 * PLANES] = {0}, whole[2 * PLANES] = {0}, clear[2 * PLANES] = {0}, below[2 * PLANES] = {0};
    for (int reveal = 0; reveal < (p->reveal > 0 ? 2 : 1); reveal++) {
      double from = atan(edges[0] / inner), to = atan(edges[1] / inner);
      if (!reveal) from = greater(from, atan(edges[0] / outer)), to = less(to, atan(edges[1] / outer));
      double du = (to - from) / COLUMNS;
      for (int column = 0; du > 0 && column < COLUMNS; column++) {
        double u = from + (column + 0.5) * du, slant = cos(u), upright[5] = {slant};
        for (int side = 0; side < 4; side++) upright[1 + side] = greater(0, cos(u - side * PI / 2));
        double bottom = atan(edges[2] * slant / inner), top = atan(edges[3] * slant / inner);
        if (reveal) {
          stretch(view->glass, u, du, upright, bottom, top, whole);
          continue;
        }
        bottom = greater(bottom, atan(edges[2] * slant / outer)), top = less(top, atan(edges[3] * slant / outer));
        double roofs = horizon_at(view->horizon, p->facing + u);
        stretch(view->glass, u, du, upright, bottom, less(top, 0), below);
        stretch(view->glass, u, du, upright, greater(bottom, 0), less(top, roofs), facade);
        stretch(view->glass, u, du, upright, greater(bottom, greater(0, roofs)), top, clear);
      }
    }
    for (int plane = 0; plane < PLANES; plane++) {
      double hidden = p->reveal > 0 ? greater(0, whole[plane] - clear[plane] - facade[plane] - below[plane]) : 0;
      double dim = p->facade * (facade[plane] + hidden);
      view->ground[plane] += p->albedo * below[plane];
      view->sky[plane] += clear[plane] + dim, view->sky[PLANES + plane] += clear[PLANES + plane] + dim;
    }
  }
}

/* Declination and distance of the sun, the series of the NOAA calculator. */
static void sun(double day, double *declination, double *distance) {
  double rad = PI / 180, t = ((1672574400.0 + (day - 1) * 86400) / 86400 + 2440587.5 - 2451545) / 36525;
  double mean = (280.46646 + t * (36000.76983 + 0.0003032 * t)) * rad, anomaly = (357.52911 + t * (35999.05029 - 0.0001537 * t)) * rad;
  double e = 0.016708634 - t * (0.000042037 + 1.267e-7 * t);
  double centre = (sin(anomaly) * (1.914602 - t * (0.004817 + 0.000014 * t)) + sin(2 * anomaly) * (0.019993 - 0.000101 * t) +
                   sin(3 * anomaly) * 0.000289) * rad;
  double node = (125.04 - 1934.136 * t) * rad, longitude = mean + centre - (0.00569 + 0.00478 * sin(node)) * rad;
  double obliquity = (23 + (26 + (21.448 - t * (46.815 + t * (0.00059 - 0.001813 * t))) / 60) / 60 + 0.00256 * cos(node)) * rad;
  *declination = asin(sin(obliquity) * sin(longitude));
  *distance = 1.000001018 * (1 - e * e) / (1 + e * cos(anomaly + centre));
}

static double shape(double angle, double sunset, double a, double b) {
  double cosine = cos(angle);
  return greater(0, (a + b * cosine) * (cosine - cos(sunset)));
}

static double diffuse_share(double k) {
  if (k <= 0.22) return 1 - 0.09 * k;
  if (k > 0.8) return 0.165;
  return 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + 12.336 * k)));
}

static void one_day(const struct place *p, const struct view *view, double day, double solar, double *row) {
  double declination, distance;
  sun(day, &declination, &distance);
  double ls = sin(p->latitude), lc = cos(p->latitude), ss = sin(declination), sc = cos(declination);
  double sunset = acos(greater(-1, less(1, -ls * ss / greater(1e-9, lc * sc))));
  int steps = (int)ceil(2 * sunset / (p->step_min * PI / 720));
  memset(row, 0, ROW * sizeof(double));
  if (steps == 0) return;
  double normal = 1361 / (distance * distance), stride = 2 * sunset / steps, shapes = 0, step_s = stride * 43200 / PI;
  double a = 0.409 + 0.5016 * sin(sunset - PI / 3), b = 0.6609 - 0.4767 * sin(sunset - PI / 3), weight = step_s / 1e6;
  for (int step = 0; step < steps; step++) shapes += shape(-sunset + (step + 0.5) * stride, sunset, a, b);
  double per_shape = shapes > 0 ? solar * 1e6 / (shapes * step_s) : 0;
  for (int step = 0; step < steps; step++) {
    double angle = -sunset + (step + 0.5) * stride, cosine = cos(angle), sine = ls * ss + lc * sc * cosine;
    double azimuth = PI + atan2(sin(angle) * sc, cosine * ls * sc - ss * lc);
    double global = per_shape * shape(angle, sunset, a, b);
    if (global <= 0) continue;
    double k = global / (normal * greater(sine, 0.065)), beam = 0;
    if (sine >= sin(3 * PI / 180)) beam = greater(0, (global - diffuse_share(k) * global) / sine);
    double diffuse = global - beam * greater(0, sine);
    const double *sky = view->sky + (k < p->overcast ? PLANES : 0);
    for (int plane = 0; plane < PLANES; plane++)
      row[plane] += weight * diffuse * sky[plane] + weight * (diffuse + beam * greater(0, sine)) * view->ground[plane];
    row[2 * PLANES] += global * weight;
    double turn = azimuth - p->facing, ahead = cos(turn);
    if (!(beam > 0) || sine <= 0 || ahead <= 0) continue;
    double out = sqrt(greater(0, 1 - sine * sine)), across = sin(turn) / ahead, up = sine / (out * ahead);
    int lit = 0;
    for (int point = 0; point < POINTS; point++) {
      const double *o = view->openings[point];
      if (across >= o[0] && across <= o[1] && up >= o[2] && up <= o[3] && across >= o[4] && across <= o[5] && up >= o[6] && up <= o[7]) lit++;
    }
    if (lit == 0 || sine <= sin(horizon_at(view->horizon, azimuth))) continue;
    double in = weight * beam * lit / POINTS * glass_at(view->glass, out * ahead);
    row[PLANES] += in * sine, row[PLANES + 1] += in * out * ahead, row[PLANES + 2] += in;
    for (int side = 0; side < 4; side++) row[PLANES + 3 + side] += in * out * greater(0, cos(turn - side * PI / 2));
  }
  for (int at = 0; at < ROW; at++) row[at] *= p->photons;
}

static double now_ms(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return t.tv_sec * 1e3 + t.tv_nsec / 1e6;
}

int main(int argc, char **argv) {
  if (argc != 5) return 2;
  size_t days = strtoul(argv[2], NULL, 10);
  int runs = atoi(argv[3]);
  struct place place;
  struct view view;
  double *solar = malloc(days * sizeof(double)), *out = malloc(days * ROW * sizeof(double));
  FILE *file = fopen(argv[1], "rb");
  if (sizeof place != SCALARS * sizeof(double) || !solar || !out || !file) return 3;
  if (fread(&place, sizeof place, 1, file) != 1 || fread(solar, sizeof(double), days, file) != days) return 3;
  fclose(file);
  double seen = 1e300, year = 1e300;
  for (int run = 0; run < runs; run++) {
    double start = now_ms();
    see(&place, &view);
    double middle = now_ms();
    for (size_t day = 0; day < days; day++) one_day(&place, &view, day + 1, solar[day], out + ROW * day);
    seen = less(seen, middle - start), year = less(year, now_ms() - middle);
  }
  file = fopen(argv[4], "wb");
  if (!file || fwrite(view.sky, sizeof view.sky, 1, file) != 1 || fwrite(view.ground, sizeof view.ground, 1, file) != 1) return 4;
  if (fwrite(out, sizeof(double), days * ROW, file) != days * ROW) return 4;
  fclose(file);
  printf("%.9g %.9g\n", seen, year);
  return 0;
}
