/** Stands in for the WebGPU backend, which pose-detection imports statically and we never register. */
export class WebGPUBackend {}
export const webgpu_util = {}
