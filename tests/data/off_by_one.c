/* The machine's mathematical library with every result off by one unit in the last place,
   for LD_PRELOAD; tests/outside/same.rs compiles it. When the program ends, the names of the
   functions that were called are written into the file that ASKED names.
   With WITNESS defined it is a program that prints what three functions give. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#ifdef WITNESS

int main(int count, char **arguments)
{
    (void)arguments;
    printf("%.17g %.17g %.9g\n", sin(count), pow(count + 1.0, 0.3), expf(count));
    return 0;
}

#else

static const char *called[99];
static int calls;

static void note(const char *name, int *noted)
{
    if (!*noted && calls < 99)
        called[calls++] = name;
    *noted = 1;
}

__attribute__((destructor)) static void say(void)
{
    const char *path = getenv("ASKED");
    FILE *file = path ? fopen(path, "w") : NULL;
    if (!file)
        return;
    for (int i = 0; i < calls; i++)
        fprintf(file, "%s ", called[i]);
    fclose(file);
}

#define OFF(type, name, next, parameters, arguments)                              \
    type name parameters                                                          \
    {                                                                             \
        static type(*machine) parameters;                                         \
        static int noted;                                                         \
        note(#name, &noted);                                                      \
        if (!machine)                                                             \
            machine = dlsym(RTLD_NEXT, #name);                                    \
        type result = machine arguments;                                          \
        return isfinite(result) && result != 0 ? next(result, INFINITY) : result; \
    }
#define ONE(name)                                            \
    OFF(double, name, nextafter, (double x), (x))            \
    OFF(float, name##f, nextafterf, (float x), (x))
#define TWO(name)                                            \
    OFF(double, name, nextafter, (double x, double y), (x, y)) \
    OFF(float, name##f, nextafterf, (float x, float y), (x, y))

ONE(acos)
ONE(acosh)
ONE(asin)
ONE(asinh)
ONE(atan)
ONE(atanh)
ONE(cbrt)
ONE(cos)
ONE(cosh)
ONE(exp)
ONE(exp10)
ONE(exp2)
ONE(expm1)
ONE(log)
ONE(log10)
ONE(log1p)
ONE(log2)
ONE(sin)
ONE(sinh)
ONE(tan)
ONE(tanh)
ONE(tgamma)
TWO(atan2)
TWO(hypot)
TWO(pow)

void sincos(double x, double *sine, double *cosine)
{
    *sine = sin(x);
    *cosine = cos(x);
}

void sincosf(float x, float *sine, float *cosine)
{
    *sine = sinf(x);
    *cosine = cosf(x);
}

#endif
