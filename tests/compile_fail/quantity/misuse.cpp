// Each REFUSED line stands in a case of its own and must not compile; without a case the file must.
#include "quantity/limits.h"
#include "quantity/printing.h"
#include "quantity/quantity.h"
#include "quantity/reading.h"

namespace fayline {

Length halved(Length length) {
    return length / 2.0;
}
double bearing(SpecificGravityOvenDry g, Length diameter) {
    return g.value * inMillimetres(diameter);
}
double withdrawal(CharacteristicDensity density) {
    return inKilogramsPerCubicMetre(density.value);
}
double sine(Angle angle) {
    return angle.inRadians();
}
int row(Gauge gauge) {
    return gauge.number();
}

void use() {
    const Length length = inches(1.5);
    const Force force = newtons(1200);
    const Gauge gauge(14);
    const SpecificGravityOvenDry ovenDry{0.55};
    const SpecificGravityTwelve atTwelve{0.53};
    const SpecificGravityGreen green{0.5};
    const Density density = kilogramsPerCubicMetre(560);

    // The right way for each.
    (void)(length + millimetres(1));
    (void)(force * length + newtonMetres(1));
    (void)(halved(length) < length);
    (void)bearing(ovenDry, length);
    (void)withdrawal(CharacteristicDensity{density});
    (void)sine(Angle::degrees(12));
    (void)row(gauge);
    (void)(atTwelve == SpecificGravityTwelve{0.53});
    (void)(green == SpecificGravityGreen{0.5});
    (void)readLength("3", "", LengthUnit::in);
    (void)exactText(length, LengthUnit::mm);
    (void)within(length, Limits<Length>{millimetres(0), {}}, "", "",
                 [](Length l) { return exactText(l, LengthUnit::mm); });

#if defined(LENGTH_PLUS_FORCE)
    (void)(length + force);  // REFUSED
#elif defined(LENGTH_PLUS_AREA)
    (void)(length + length * length);  // REFUSED
#elif defined(LENGTH_COMPARED_TO_FORCE)
    (void)(length < force);  // REFUSED
#elif defined(LENGTH_PLUS_NUMBER)
    (void)(length + 1.0);  // REFUSED
#elif defined(NUMBER_AS_LENGTH_ARGUMENT)
    (void)halved(0.038);  // REFUSED
#elif defined(NUMBER_AS_LENGTH)
    Length other = 0.038;  // REFUSED
#elif defined(NUMBER_IN_BRACES_AS_LENGTH)
    Length other{0.038};  // REFUSED
#elif defined(LENGTH_AS_NUMBER)
    double other = length;  // REFUSED
#elif defined(GAUGE_AS_LENGTH)
    (void)halved(gauge);  // REFUSED
#elif defined(LENGTH_AS_GAUGE)
    (void)row(length);  // REFUSED
#elif defined(NUMBER_AS_GAUGE)
    (void)row(14);  // REFUSED
#elif defined(GAUGE_AS_NUMBER)
    int other = gauge;  // REFUSED
#elif defined(TWELVE_AS_OVEN_DRY)
    (void)bearing(atTwelve, length);  // REFUSED
#elif defined(GREEN_AS_OVEN_DRY)
    (void)bearing(green, length);  // REFUSED
#elif defined(OVEN_DRY_COMPARED_TO_TWELVE)
    (void)(ovenDry == atTwelve);  // REFUSED
#elif defined(OVEN_DRY_ASSIGNED_TO_TWELVE)
    SpecificGravityTwelve other = ovenDry;  // REFUSED
#elif defined(DENSITY_AS_CHARACTERISTIC)
    (void)withdrawal(density);  // REFUSED
#elif defined(NUMBER_AS_OVEN_DRY)
    (void)bearing(0.55, length);  // REFUSED
#elif defined(CHARACTERISTIC_AS_OVEN_DRY)
    (void)bearing(CharacteristicDensity{density}, length);  // REFUSED
#elif defined(NUMBER_AS_ANGLE)
    (void)sine(0.2);  // REFUSED
#elif defined(ANGLE_AS_NUMBER)
    double other = Angle::degrees(12);  // REFUSED
#elif defined(BARE_UNIT_OF_ANOTHER_KIND)
    (void)readLength("3", "", MassUnit::lb);  // REFUSED
#elif defined(PRINTED_IN_UNIT_OF_ANOTHER_KIND)
    (void)exactText(length, ForceUnit::n);  // REFUSED
#elif defined(ROOT_OF_A_LENGTH)
    (void)sqrt(length);  // REFUSED
#endif
}

}  // namespace fayline
