// Draws a piece in ink on paper, as the pictures do, and turns it; which part was picked is told in the words
// that the 3-D file carries.
const EYE = [36 / 65, 25 / 65, 48 / 65]; // where the pictures from the corner are seen from
const ANGLE = 26; // how much is seen, in degrees from top to bottom
const TURN = Math.PI / 18; // what one key turns
const SLIP = 5; // pixels that a finger may move in a tap
const PAPER = "#fbf7ee", INK = "#33302b", PENCIL = "#a63a22";

export const open = async (folder, canvas, tell) => {
  const [three, { OrbitControls }, { GLTFLoader }] = await Promise.all(
    ["three.module.min.js", "OrbitControls.js", "GLTFLoader.js"].map((name) => import(folder + name)),
  );
  const renderer = new three.WebGLRenderer({ canvas, antialias: true });
  renderer.setClearColor(PAPER);
  renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
  const camera = new three.PerspectiveCamera(ANGLE);
  const scene = new three.Scene();
  const sun = new three.DirectionalLight("#ffffff", 1.3);
  sun.position.set(-0.5, 1, 0.6);
  camera.add(sun);
  scene.add(camera, new three.HemisphereLight("#ffffff", "#cdbf9f", 2.2));
  const controls = new OrbitControls(camera, canvas);
  controls.enableDamping = !matchMedia("(prefers-reduced-motion: reduce)").matches;

  const ink = new three.LineBasicMaterial({ color: INK });
  const pencil = new three.LineBasicMaterial({ color: PENCIL, depthTest: false });
  let piece = null;
  let picked = null;
  let reach = 0;

  let isAsked = false;
  const draw = () => {
    isAsked = false;
    const isMoving = controls.update();
    renderer.render(scene, camera);
    if (isMoving) redraw();
  };
  const redraw = () => {
    if (isAsked) return;
    isAsked = true;
    requestAnimationFrame(draw);
  };
  controls.addEventListener("change", redraw);
  const measure = () => {
    const { clientWidth: width, clientHeight: height } = canvas;
    if (!width || !height) return;
    renderer.setSize(width, height, false);
    camera.aspect = width / height;
    camera.updateProjectionMatrix();
    redraw();
  };
  new ResizeObserver(measure).observe(canvas);

  const parts = () => piece?.children.filter((one) => one.isMesh) ?? [];

  const dress = (part) => {
    const geometry = part.geometry;
    geometry.userData.edges ??= new three.EdgesGeometry(geometry, 15);
    const lines = new three.LineSegments(geometry.userData.edges, ink);
    lines.raycast = () => {};
    part.add(lines);
    const wood = part.material.color.clone().lerp(new three.Color(PAPER), 0.45);
    part.material = new three.MeshLambertMaterial({ color: wood, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 });
    part.userData.wood = wood;
  };

  const pick = (part) => {
    picked = part;
    for (const one of parts()) {
      const isIt = one === part;
      const isAlike = one.userData.part === part?.userData.part;
      one.material.color.copy(one.userData.wood).lerp(new three.Color(PENCIL), isIt ? 0.6 : isAlike ? 0.28 : 0);
      one.children[0].material = isIt ? pencil : ink;
      one.children[0].renderOrder = isIt ? 1 : 0;
    }
    tell(part?.userData ?? null);
    redraw();
  };

  const put = (made) => {
    const middle = new three.Sphere();
    new three.Box3().setFromObject(made).getBoundingSphere(middle);
    const half = three.MathUtils.degToRad(ANGLE / 2);
    const away = middle.radius / Math.sin(Math.min(half, Math.atan(Math.tan(half) * camera.aspect)));
    const way = reach ? camera.position.clone().sub(controls.target).multiplyScalar(middle.radius / reach) : new three.Vector3(...EYE).multiplyScalar(away);
    reach = middle.radius;
    controls.target.copy(middle.center);
    camera.position.copy(middle.center).add(way);
    camera.near = reach / 50;
    camera.far = away * 6;
    camera.updateProjectionMatrix();
    controls.minDistance = reach / 4;
    controls.maxDistance = away * 2.5;
  };

  const drop = (made) => {
    scene.remove(made);
    for (const part of made.children) {
      part.geometry?.userData.edges?.dispose();
      part.geometry?.dispose();
      part.material?.dispose();
    }
  };

  let down = null;
  canvas.addEventListener("pointerdown", (event) => { down = event.isPrimary ? event : null; });
  canvas.addEventListener("pointerup", (event) => {
    if (!down || Math.hypot(event.clientX - down.clientX, event.clientY - down.clientY) > SLIP) return;
    const { left, top, width, height } = canvas.getBoundingClientRect();
    const place = new three.Vector2(((event.clientX - left) / width) * 2 - 1, 1 - ((event.clientY - top) / height) * 2);
    const ray = new three.Raycaster();
    ray.setFromCamera(place, camera);
    pick(ray.intersectObjects(parts(), false)[0]?.object ?? null);
  });

  return {
    async show(bytes) {
      const { scene: made } = await new GLTFLoader().parseAsync(bytes, "");
      if (piece) drop(piece);
      piece = made;
      scene.add(made);
      parts().forEach(dress);
      measure();
      put(made);
      pick(picked && parts().find((one) => one.userData.name === picked.userData.name));
    },
    // the next kind of part, or the one before
    step(by) {
      const kinds = [...new Map(parts().map((one) => [one.userData.part, one]).reverse()).values()].reverse();
      const at = kinds.findIndex((one) => one.userData.part === picked?.userData.part);
      if (kinds.length) pick(kinds[at < 0 && by < 0 ? kinds.length - 1 : (at + by + kinds.length) % kinds.length]);
    },
    letGo() {
      const was = picked !== null;
      pick(null);
      return was;
    },
    turn(right, down) {
      const way = new three.Spherical().setFromVector3(camera.position.clone().sub(controls.target));
      way.theta += right * TURN;
      way.phi += down * TURN;
      camera.position.setFromSpherical(way.makeSafe()).add(controls.target);
      redraw();
    },
    zoom(by) {
      camera.position.sub(controls.target).multiplyScalar(by).add(controls.target);
      redraw();
    },
  };
};
