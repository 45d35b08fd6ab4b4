package underfoot.working;

/**
 * A strength class of timber.
 *
 * @param name its class, such as C16
 * @param modulus mean modulus of elasticity along the grain, N/mm2
 * @param shearModulus mean shear modulus, N/mm2
 * @param bendingStrength characteristic bending strength, N/mm2
 * @param shearStrength characteristic shear strength, N/mm2
 * @param density mean density, kg/L
 * @param status how well the values are known, an entry of {@code statuses.yaml}
 */
public record TimberGrade(
    String name,
    double modulus,
    double shearModulus,
    double bendingStrength,
    double shearStrength,
    double density,
    String status) {}
