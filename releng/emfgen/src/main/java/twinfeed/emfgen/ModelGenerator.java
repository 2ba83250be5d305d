// SPDX-License-Identifier: EPL-2.0
package twinfeed.emfgen;

import java.io.File;
import java.io.IOException;
import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;

/** Generates the Java code of a genmodel; arguments: project name, project folder, genmodel path relative to the folder. */
public final class ModelGenerator {
    private ModelGenerator() {}

    /**
     * Runs the generator.
     *
     * @param args project name, project folder, genmodel path
     * @throws IOException if the folder cannot be resolved
     */
    public static void main(String[] args) throws IOException {
        String project = args[0];
        File folder = new File(args[1]).getCanonicalFile();
        // A folder named like the project stands for it, so that the generator finds its platform addresses.
        EcorePlugin.getPlatformResourceMap().put(project, URI.createFileURI(folder.getPath() + "/"));
        GenModel model = load(URI.createPlatformResourceURI("/" + project + "/" + args[2], true));
        Generator generator = new Generator();
        generator.setInput(model);
        refuse(generator.generate(model, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE, new BasicMonitor()));
    }

    private static GenModel load(URI uri) {
        GenModelPackage.eINSTANCE.eClass();
        GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(
                GenModelPackage.eNS_URI, GenModelGeneratorAdapterFactory.DESCRIPTOR);
        ResourceSet resources = new ResourceSetImpl();
        resources
                .getResourceFactoryRegistry()
                .getExtensionToFactoryMap()
                .put(Resource.Factory.Registry.DEFAULT_EXTENSION, new EcoreResourceFactoryImpl());
        GenModel model =
                (GenModel) resources.getResource(uri, true).getContents().get(0);
        model.reconcile();
        model.setCanGenerate(true);
        refuse(model.diagnose());
        return model;
    }

    private static void refuse(Diagnostic diagnostic) {
        if (diagnostic.getSeverity() >= Diagnostic.ERROR) {
            throw new IllegalStateException(diagnostic.getMessage() + " " + diagnostic.getChildren());
        }
    }
}
