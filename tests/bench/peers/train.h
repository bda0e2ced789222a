/* A plated still with its energy balance (docs/theory/train.md) for the peers: the same equations, the same tables, the bare minimum of
 * unknowns. Holder j has U/LAMBDA0, y, n1, n2 at 4 j; the drum n1, n2 after them. Total condenser, liquid runs back; no receiver. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

enum { MOST = 64 };
static const double ZERO_CELSIUS = 273.15, LAMBDA0 = 40e3, NOTHING = 1e-12;
typedef struct {
  double efficiency, loss, reference, metal, brim, boil_rate, boil_width, weir_rate, weir_width, little, scale;
} Holder;
static int count, size, intervals, phases;
static double heat, drum_brim, drum_rate, drum_width, drum_scale, drum_subcooling;
static double seconds[8], returned[8], share;
static Holder holder[MOST];
static double *tables, *start;

static double number(FILE *file) {
  double value;
  if (fread(&value, sizeof value, 1, file) != 1) exit(fprintf(stderr, "the train's file is too short\n"));
  return value;
}

/* Little-endian doubles, in the order in which ../train-file.mjs writes them. */
static void read_train(const char *path) {
  FILE *file = fopen(path, "rb");
  if (!file) exit(fprintf(stderr, "cannot read %s\n", path));
  count = (int)number(file), intervals = (int)number(file), heat = number(file);
  size = 4 * count + 2;
  drum_brim = number(file), drum_rate = number(file), drum_width = number(file), drum_scale = number(file);
  drum_subcooling = number(file);
  phases = (int)number(file);
  for (int p = 0; p < phases; p++) seconds[p] = number(file), returned[p] = number(file);
  for (int j = 0; j < count; j++)
    for (int k = 0; k < (int)(sizeof(Holder) / sizeof(double)); k++) ((double *)&holder[j])[k] = number(file);
  start = malloc(size * sizeof *start);
  for (int i = 0; i < size; i++) start[i] = number(file);
  /* For each holder, then the drum: 16 coefficients on the boiling line, 8 below it, 4 of the vapour, an interval. */
  long values = (long)(count + 1) * intervals * 28;
  tables = malloc(values * sizeof *tables);
  for (long i = 0; i < values; i++) tables[i] = number(file);
  fclose(file);
}

static inline double above(double e, double w) {
  if (e <= -w) return 0;
  if (e >= w) return e;
  double z = e / w, q = z * z;
  return w * (0.15625 + 0.5 * z + q * (0.46875 + q * (-0.15625 + 0.03125 * q)));
}
static inline double above_slope(double e, double w) {
  if (e <= -w) return 0;
  if (e >= w) return 1;
  double z = e / w, q = z * z;
  return 0.5 + z * (0.9375 + q * (-0.625 + 0.1875 * q));
}
static inline double cubic(const double *c, double s) { return c[0] + s * (c[1] + s * (c[2] + s * c[3])); }
static inline double cubic_slope(const double *c, double s) { return c[1] + s * (2 * c[2] + s * 3 * c[3]); }
static inline int piece(double x, double *s) {
  double position = x * intervals;
  int k = position <= 0 ? 0 : position >= intervals ? intervals - 1 : (int)position;
  *s = position - k;
  return k;
}
static inline double larger(double a, double b) { return a > b ? a : b; }

/* What a holder is and gives; slopes by energy, ethanol, water where asked for. */
typedef struct {
  double x, T, V, H, L, h, y_star, N;
  double V_u[3], T_u[3], h_u[3], L_u[3], x_u[3], y_star_x, H_y;
} Streams;

static inline void streams(int j, const double *u, Streams *o, int slopes) {
  const Holder *a = &holder[j];
  const double *boiling = tables + (long)j * intervals * 28, *cold = boiling + 16 * intervals, *vapour = cold + 8 * intervals;
  double s, N = larger(NOTHING, u[2] + u[3]), x = u[2] / N;
  int k = piece(x, &s);
  const double *b = boiling + 16 * k, *c = cold + 8 * k;
  double alpha = cubic(b, s), T = cubic(b + 4, s), h = cubic(b + 8, s) / LAMBDA0;
  double e = u[0] - N * h - a->metal * (T - ZERO_CELSIUS), w = a->boil_width;
  double rises = above(e, w), gate = N / (N + a->little), d = 0, c1 = 0, c2 = 0, below_heat = 0;
  if (e < -w) {
    c1 = cubic(c, s) / LAMBDA0, c2 = cubic(c + 4, s) / LAMBDA0;
    double lacks = above(-e - 2 * w, w), m = N * c1 + a->metal;
    d = 2 * lacks / (m + sqrt(larger(0, m * m + 4 * N * c2 * lacks)));
    below_heat = d * (c1 + c2 * d);
  }
  double r, mix = 1 / (1 + (alpha - 1) * x);
  const double *v = vapour + 4 * piece(u[1], &r);
  o->N = N, o->x = x, o->T = T - d, o->h = h - below_heat, o->V = rises * a->boil_rate * gate;
  o->y_star = alpha * x * mix, o->H = cubic(v, r) / LAMBDA0, o->L = 0;
  double crest = 0, volume = 1;
  if (a->brim < INFINITY) {
    volume = cubic(b + 12, s);
    crest = N - a->brim / volume;
    o->L = above(crest, a->weir_width) * a->weir_rate;
  }
  if (!slopes) return;
  double h_x = cubic_slope(b + 8, s) * intervals / LAMBDA0, T_x = cubic_slope(b + 4, s) * intervals;
  double x_u[3] = {0, (1 - x) / N, -x / N}, rise = above_slope(e, w), dry = a->little / ((N + a->little) * (N + a->little));
  double over = a->brim < INFINITY ? above_slope(crest, a->weir_width) * a->weir_rate : 0;
  double full_x = -a->brim * cubic_slope(b + 12, s) * intervals / (volume * volume);
  double c1_x = 0, c2_x = 0, lack = 0;
  if (e < -w) {
    c1_x = cubic_slope(c, s) * intervals / LAMBDA0, c2_x = cubic_slope(c + 4, s) * intervals / LAMBDA0;
    lack = -above_slope(-e - 2 * w, w);
  }
  double heat_d = c1 + 2 * c2 * d, heat_x = d * (c1_x + c2_x * d), per = e < -w ? 1 / (N * heat_d + a->metal) : 0;
  for (int i = 0; i < 3; i++) {
    double e_u = i == 0 ? 1 : -h - (N * h_x + a->metal * T_x) * x_u[i];
    double d_u = (lack * e_u - (i ? below_heat + N * heat_x * x_u[i] : 0)) * per;
    o->x_u[i] = x_u[i];
    o->V_u[i] = a->boil_rate * (rise * e_u * gate + (i ? rises * dry : 0));
    o->T_u[i] = T_x * x_u[i] - d_u;
    o->h_u[i] = (h_x - heat_x) * x_u[i] - heat_d * d_u;
    o->L_u[i] = i && over > 0 ? over * (1 - full_x * x_u[i]) : 0;
  }
  double alpha_x = cubic_slope(b, s) * intervals;
  o->y_star_x = (alpha + alpha_x * x * (1 - x)) * mix * mix;
  o->H_y = cubic_slope(v, r) * intervals / LAMBDA0;
}

/* What runs out of the drum: rate, enthalpy, composition, and slopes by its two amounts. */
typedef struct {
  double x, rate, h, rate_u[2], h_u[2], x_u[2];
} DrumStreams;

static inline void drum_streams(const double *n, DrumStreams *o) {
  const double *boiling = tables + (long)count * intervals * 28, *cold = boiling + 16 * intervals;
  double s, N = larger(NOTHING, n[0] + n[1]), x = n[0] / N, d = drum_subcooling;
  int k = piece(x, &s);
  const double *b = boiling + 16 * k, *c = cold + 8 * k;
  double volume = cubic(b + 12, s), crest = N - drum_brim / volume, slope = above_slope(crest, drum_width) * drum_rate;
  double full_x = -drum_brim * cubic_slope(b + 12, s) * intervals / (volume * volume);
  double h_x = (cubic_slope(b + 8, s) - d * (cubic_slope(c, s) + cubic_slope(c + 4, s) * d)) * intervals / LAMBDA0;
  o->x = x, o->rate = above(crest, drum_width) * drum_rate;
  o->h = (cubic(b + 8, s) - d * (cubic(c, s) + cubic(c + 4, s) * d)) / LAMBDA0;
  for (int i = 0; i < 2; i++) {
    o->x_u[i] = (i ? -x : 1 - x) / N;
    o->rate_u[i] = slope * (1 - full_x * o->x_u[i]);
    o->h_u[i] = h_x * o->x_u[i];
  }
}

/* f, the right-hand side of M du/dt = f with M = 1 but 0 in the vapours' rows. */
static void train_side(const double *u, double *f) {
  Streams o;
  DrumStreams drum;
  double energy = heat / LAMBDA0, ethanol = 0, water = 0, below = 0;
  for (int j = 0; j < count; j++) {
    const double *a = u + 4 * j;
    double *out = f + 4 * j, y = a[1];
    streams(j, a, &o, 0);
    out[0] = energy - o.V * o.H - o.L * o.h - holder[j].loss * (o.T - holder[j].reference);
    out[1] = below + (j ? holder[j].efficiency : 1) * (o.y_star - below) - y;
    out[2] = ethanol - o.V * y - o.L * o.x;
    out[3] = water - o.V * (1 - y) - o.L * (1 - o.x);
    if (j) out[-4] += o.L * o.h, out[-2] += o.L * o.x, out[-1] += o.L * (1 - o.x);
    energy = o.V * o.H, ethanol = o.V * y, water = o.V * (1 - y), below = y;
  }
  drum_streams(u + 4 * count, &drum);
  double *top = f + 4 * count - 4, back = share * drum.rate;
  top[0] += back * drum.h, top[2] += back * drum.x, top[3] += back * (1 - drum.x);
  f[4 * count] = ethanol - drum.rate * drum.x;
  f[4 * count + 1] = water - drum.rate * (1 - drum.x);
}
